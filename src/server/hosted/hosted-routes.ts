import type { FastifyRequest } from 'fastify';
import type { Host } from '../../app/hosting/host.ts';
import type { Person } from '../../store/postgres/accounts/people.ts';

/** Who asks, in which session. */
export type Comer = { readonly person: Person; readonly sessionId: string; readonly signedInAt: string };

/** What the routes of people, homes and sessions work with. */
export type HostedRoutes = {
	readonly host: Host;
	/** Where the page is, as browsers see it. */
	readonly origin: URL;
	/** Who asks; the guard has seen to it that somebody does. */
	readonly comerOf: (request: FastifyRequest) => Comer;
};
