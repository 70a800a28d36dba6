import { join } from 'node:path';
import { Readable } from 'node:stream';
import type { FastifyRequest } from 'fastify';
import { UserError } from '../../../app/errors.ts';
import { bringHomeIn, MOST_HOMES, takeHomeOff } from '../../../app/hosting/homes.ts';
import { say } from '../../../language/speak.ts';
import { dropIncoming, INCOMING_FOLDER, receiveFile } from '../../../store/incoming-file.ts';
import { createHome, homesOf, renameHome } from '../../../store/postgres/accounts/homes.ts';
import type { App } from '../../typed-app.ts';
import { requireOwner } from '../home-owner.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';

/** An archive of 10,000 photos. */
const ARCHIVE_BYTES = 64 * 1024 ** 3;

/** The homes of a person: theirs, and those that they were let into. */
export function homeRoutes(app: App, shared: HostedRoutes): void {
	const { host, comerOf } = shared;
	const { accounts } = host;
	async function requireRoom(request: FastifyRequest): Promise<void> {
		const homes = await homesOf(accounts, comerOf(request).person.id);
		if (homes.filter(({ role }) => role === 'own').length >= MOST_HOMES)
			throw new UserError('conflict', say('hosting.mostHomes', { most: MOST_HOMES }));
	}

	app.route({ ...HOSTED.listHomes, handler: (request) => homesOf(accounts, comerOf(request).person.id) });
	app.route({
		...HOSTED.addHome,
		handler: async (request, reply) => {
			await requireRoom(request);
			const home = { id: host.newId(), name: request.body.name };
			const at = host.now().toISOString();
			await accounts
				.transaction()
				.execute((trx) => createHome(trx, { ...home, person: comerOf(request).person.id, at }));
			return reply.code(201).send(home);
		},
	});
	app.route({
		...HOSTED.renameHome,
		handler: async (request) => {
			const { home } = request.params;
			await requireOwner(shared, request, home);
			await renameHome(accounts, home, request.body.name);
			return { id: home, name: request.body.name };
		},
	});
	app.route({
		...HOSTED.removeHome,
		handler: async (request) => {
			await requireOwner(shared, request, request.params.home);
			await takeHomeOff(host, request.params.home);
			return { removed: true };
		},
	});
	app.route({
		...HOSTED.bringHome,
		bodyLimit: ARCHIVE_BYTES,
		handler: async (request, reply) => {
			await requireRoom(request);
			if (!(request.body instanceof Readable)) throw new UserError('bad-request', say('serverWords.noArchive'));
			const archive = await receiveFile(request.body, join(host.workFolder, INCOMING_FOLDER));
			try {
				const home = { id: host.newId(), name: request.query.name };
				await bringHomeIn(host, archive.path, { ...home, person: comerOf(request).person.id });
				return await reply.code(201).send(home);
			} finally {
				await dropIncoming(archive);
			}
		},
	});
}
