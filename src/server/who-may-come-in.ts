import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { UserError } from '../app/errors.ts';
import { type Sharing, UNUSED_LIFETIME_S } from '../app/sharing.ts';
import { say } from '../language/speak.ts';
import { limitLines } from './lines-a-device.ts';
import { isLoopback } from './loopback.ts';
import { OPEN_ROUTES, ROUTES_OF_THIS_COMPUTER } from './open-routes.ts';

/** Cookie by which a paired device is known again. */
export const PAIRING_COOKIE = 'dyelot-paired';

/** Whether the request was made on the computer that runs the program. */
const isOnThisComputer = (request: FastifyRequest): boolean => isLoopback(request.ip);

const hasNoBody = (method: string): boolean => method === 'GET' || method === 'HEAD';

/** The error for an address that no route has. */
export const noSuchAddress = ({ method, url }: FastifyRequest): UserError =>
	new UserError('not-found', say('serverWords.noAddress', { method, url: url.slice(0, 120) }));

/** Gives a device its token, for as long as it may stay unused. Scripts cannot read it, other sites cannot make the browser send it. */
export const rememberDevice = (reply: FastifyReply, token: string): FastifyReply =>
	reply.setCookie(PAIRING_COOKIE, token, {
		httpOnly: true,
		sameSite: 'strict',
		path: '/',
		maxAge: UNUSED_LIFETIME_S,
	});

/** Whether whoever asks is on this computer or paired, now: an answer that goes on for long asks again. */
export const isLetIn = (request: FastifyRequest, sharing: Sharing | null): boolean =>
	isOnThisComputer(request) || (sharing?.recognise(request.cookies[PAIRING_COOKIE]).paired ?? false);

/**
 * Refuses every request from another device unless that is paired or the route is one of the open ones. What counts is the route that
 * will answer, never the address as it was written: an address has many spellings, and the router knows them all.
 */
export function guardRoutes(app: FastifyInstance, sharing: Sharing | null): void {
	limitLines(app.server);
	app.addHook('onRequest', async (request, reply) => {
		if (request.is404) {
			// Answered before its body is read: nobody's bytes are worth work for an address that does not exist.
			if (!hasNoBody(request.method)) throw noSuchAddress(request);
			return;
		}
		const route = `${request.method} ${request.routeOptions.url}`;
		if (OPEN_ROUTES.has(route) || isOnThisComputer(request)) return;
		const token = request.cookies[PAIRING_COOKIE];
		const { paired, renewed } = sharing?.recognise(token) ?? { paired: false, renewed: false };
		if (!paired) throw new UserError('not-paired', say('serverWords.notPaired'));
		if (ROUTES_OF_THIS_COMPUTER.has(route)) throw new UserError('other-device', say('serverWords.otherDevice'));
		if (renewed && token !== undefined) rememberDevice(reply, token);
	});
}
