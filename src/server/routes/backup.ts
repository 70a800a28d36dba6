import { PassThrough, Readable } from 'node:stream';
import { UserError } from '../../app/errors.ts';
import { type Services, todayOf } from '../../app/services.ts';
import { say } from '../../language/speak.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { homeOperations } from '../operations/home.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** A backup of 10,000 photos takes about a minute. */
const COME_BACK_S = 30;

/** The whole home as one archive, taken while the program runs, and the way back from one: each one at a time of a home. */
export function backupRoutes(app: App, servicesOf: ServicesOf): void {
	/** Homes whose archive is on its way. */
	const running = new Set<Services>();
	// No HEAD beside it: that would do the whole work and throw it away.
	app.route({
		...homeOperations.getBackup,
		exposeHeadRoute: false,
		handler: async (request, reply) => {
			const services = servicesOf(request);
			const { backup } = services;
			if (!backup) throw new UserError('bad-request', say('serverWords.noBackupHere'));
			if (running.has(services))
				throw new UserError('busy', say('serverWords.oneBackup'), { retryAfterS: COME_BACK_S });
			running.add(services);
			const stream = new PassThrough();
			reply.raw.once('close', () => stream.destroy());
			backup(stream)
				.catch((error: unknown) => {
					// Whoever left in the middle is no fault.
					if (!reply.raw.destroyed) request.log.error(error);
					// Cutting the stream short is the only way left to say that the archive is not whole.
					stream.destroy(error as Error);
				})
				.finally(() => running.delete(services));
			return reply
				.type('application/x-tar')
				.header('content-disposition', `attachment; filename="dyelot-${todayOf(services)}.tar"`)
				.send(stream);
		},
	});
	let isRestoring = false;
	app.route({
		...homeOperations.restoreBackup,
		bodyLimit: BODY_LIMITS.archive,
		handler: async (request, reply) => {
			const { restore } = servicesOf(request);
			if (!restore) throw new UserError('bad-request', say('serverWords.noRestoreHere'));
			if (!(request.body instanceof Readable)) throw new UserError('bad-request', say('serverWords.noArchive'));
			if (isRestoring) throw new UserError('busy', say('serverWords.oneRestore'), { retryAfterS: COME_BACK_S });
			isRestoring = true;
			try {
				const { restored, begin } = await restore(request.body);
				// The answer is on its way before the program stops to start anew.
				reply.raw.once('close', begin);
				return reply.code(202).send(restored);
			} catch (error) {
				isRestoring = false;
				throw error;
			}
		},
	});
}
