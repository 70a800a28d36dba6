import type { FastifyRequest } from 'fastify';
import { UserError } from '../../../app/errors.ts';
import { takePersonOff } from '../../../app/hosting/homes.ts';
import { invite } from '../../../app/hosting/joining.ts';
import { say } from '../../../language/speak.ts';
import { listPeople } from '../../../store/postgres/accounts/people.ts';
import type { App } from '../../typed-app.ts';
import { noSuchAddress } from '../../who-may-come-in.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';

/** Who comes in here at all: for whoever keeps this host. To all others there is no such address. */
export function peopleRoutes(app: App, { host, origin, comerOf }: HostedRoutes): void {
	function requireHost(request: FastifyRequest): void {
		if (!comerOf(request).person.isHost) throw noSuchAddress(request);
	}
	app.route({
		...HOSTED.listPeople,
		handler: (request) => {
			requireHost(request);
			return listPeople(host.accounts);
		},
	});
	app.route({
		...HOSTED.invitePerson,
		handler: async (request, reply) => {
			requireHost(request);
			return reply.code(201).send({ link: await invite(host, origin, { home: null, role: null, isHost: false }) });
		},
	});
	app.route({
		...HOSTED.removePerson,
		handler: async (request) => {
			requireHost(request);
			const { id } = request.params;
			if (id === comerOf(request).person.id) throw new UserError('conflict', say('hosting.hostStays'));
			await takePersonOff(host, id);
			return { removed: true };
		},
	});
}
