import type { FastifyRequest } from 'fastify';
import { UserError } from '../../app/errors.ts';
import { say } from '../../language/speak.ts';
import type { HostedRoutes } from './hosted-routes.ts';

const RECENT_MS = 60 * 60 * 1000;

/** Refuses a session that began long ago: what people sign in with is changed by whoever has just done so, not by whoever found a page open. */
export function requireRecentSignIn({ host, comerOf }: HostedRoutes, request: FastifyRequest): void {
	const since = host.now().getTime() - Date.parse(comerOf(request).signedInAt);
	if (since > RECENT_MS) throw new UserError('conflict', say('hosting.signInAgain'));
}
