import { PassThrough } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import { UserError } from '../../app/errors.ts';
import { type Services, todayOf } from '../../app/services.ts';

/** The whole home as one archive, taken while the program runs. */
export function backupRoutes(app: FastifyInstance, services: Services): void {
	app.get('/api/backup', async (request, reply) => {
		const { backup } = services;
		if (!backup)
			throw new UserError('bad-request', 'Expected a home on this computer for a backup; this one is kept elsewhere.');
		const stream = new PassThrough();
		backup(stream).catch((error: unknown) => {
			request.log.error(error);
			// Cutting the stream short is the only way left to say that the archive is not whole.
			stream.destroy(error as Error);
		});
		return reply
			.type('application/x-tar')
			.header('content-disposition', `attachment; filename="dyelot-${todayOf(services)}.tar"`)
			.send(stream);
	});
}
