import { join } from 'node:path';
import type { FastifyRequest } from 'fastify';
import { UserError } from '../../../app/errors.ts';
import { bringHomeIn, MOST_HOMES, takeHomeOff } from '../../../app/hosting/homes.ts';
import { invite } from '../../../app/hosting/joining.ts';
import { say } from '../../../language/speak.ts';
import { dropIncoming, INCOMING_FOLDER, receiveFile } from '../../../store/incoming-file.ts';
import { createHome, homesOf, membersOf, putOut, renameHome, roleIn } from '../../../store/postgres/accounts/homes.ts';
import type { App } from '../../typed-app.ts';
import { noSuchAddress } from '../../who-may-come-in.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';

/** An archive of 10,000 photos. */
const ARCHIVE_BYTES = 64 * 1024 ** 3;

/** The homes of a person: theirs, and those that they were let into. */
export function homeRoutes(app: App, { host, origin, comerOf }: HostedRoutes): void {
	const { accounts } = host;
	/** Only an owner decides about a home; to all who may not come in there is none. */
	async function requireOwner(request: FastifyRequest, home: string): Promise<void> {
		const role = await roleIn(accounts, home, comerOf(request).person.id);
		if (role === null) throw noSuchAddress(request);
		if (role !== 'own') throw new UserError('only-looking', say('hosting.onlyOwners'));
	}
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
			await requireOwner(request, home);
			await renameHome(accounts, home, request.body.name);
			return { id: home, name: request.body.name };
		},
	});
	app.route({
		...HOSTED.removeHome,
		handler: async (request) => {
			await requireOwner(request, request.params.home);
			await takeHomeOff(host, request.params.home);
			return { removed: true };
		},
	});
	app.route({
		...HOSTED.bringHome,
		bodyLimit: ARCHIVE_BYTES,
		handler: async (request, reply) => {
			await requireRoom(request);
			const archive = await receiveFile(
				request.body as Parameters<typeof receiveFile>[0],
				join(host.workFolder, INCOMING_FOLDER),
			);
			try {
				const home = { id: host.newId(), name: request.query.name };
				await bringHomeIn(host, archive.path, { ...home, person: comerOf(request).person.id });
				return await reply.code(201).send(home);
			} finally {
				await dropIncoming(archive);
			}
		},
	});
	app.route({
		...HOSTED.listMembers,
		handler: async (request) => {
			await requireOwner(request, request.params.home);
			return membersOf(accounts, request.params.home);
		},
	});
	app.route({
		...HOSTED.inviteMember,
		handler: async (request, reply) => {
			const { home } = request.params;
			await requireOwner(request, home);
			const link = await invite(host, origin, { home, role: request.body.role, isHost: false });
			return reply.code(201).send({ link });
		},
	});
	app.route({
		...HOSTED.putOutMember,
		handler: async (request) => {
			const { home, person } = request.params;
			// Everybody may leave by themselves.
			if (person !== comerOf(request).person.id) await requireOwner(request, home);
			if (!(await putOut(accounts, home, person))) throw new UserError('conflict', say('hosting.lastOwner'));
			return { out: true };
		},
	});
}
