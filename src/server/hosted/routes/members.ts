import { UserError } from '../../../app/errors.ts';
import { invite } from '../../../app/hosting/joining.ts';
import { lookAgainAtLinesOf } from '../../../app/hosting/open-lines.ts';
import { say } from '../../../language/speak.ts';
import { membersOf, putOut } from '../../../store/postgres/accounts/homes.ts';
import { removeInvitations } from '../../../store/postgres/accounts/invitations.ts';
import type { App } from '../../typed-app.ts';
import { requireOwner } from '../home-owner.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';

/** Who may come into a home, and how they are let in and put out. */
export function memberRoutes(app: App, shared: HostedRoutes): void {
	const { host, origin, comerOf } = shared;
	const { accounts } = host;
	app.route({
		...HOSTED.listMembers,
		handler: async (request) => {
			await requireOwner(shared, request, request.params.home);
			return membersOf(accounts, request.params.home);
		},
	});
	app.route({
		...HOSTED.inviteMember,
		handler: async (request, reply) => {
			const { home } = request.params;
			await requireOwner(shared, request, home);
			const link = await invite(host, origin, { home, role: request.body.role, isHost: false });
			return reply.code(201).send({ link });
		},
	});
	app.route({
		...HOSTED.putOutMember,
		handler: async (request) => {
			const { home, person } = request.params;
			// Everybody may leave by themselves; whoever is put out comes back by no link that they were sent before.
			const isLeaving = person === comerOf(request).person.id;
			if (!isLeaving) await requireOwner(shared, request, home);
			if (!(await putOut(accounts, home, person))) throw new UserError('conflict', say('hosting.lastOwner'));
			if (!isLeaving) await removeInvitations(accounts, home);
			lookAgainAtLinesOf(host, home);
			return { out: true };
		},
	});
}
