import type { FastifyInstance, FastifyRequest } from 'fastify';
import { UserError } from '../app/errors.ts';
import type { Sharing } from '../app/sharing.ts';
import { OPEN_ROUTES } from './open-routes.ts';

/** Cookie by which a paired device is known again. */
export const PAIRING_COOKIE = 'dyelot-paired';

const LOOPBACK = new Set(['127.0.0.1', '::1', '::ffff:127.0.0.1']);

/** Whether the request was made on the computer that runs the program. */
export const isOnThisComputer = (request: FastifyRequest): boolean => LOOPBACK.has(request.ip);

const hasNoBody = (method: string): boolean => method === 'GET' || method === 'HEAD';

/** The error for an address that no route has. */
export const noSuchAddress = ({ method, url }: FastifyRequest): UserError =>
	new UserError('not-found', `Expected an address of Dyelot; ${method} ${url.slice(0, 120)} is none.`);

/**
 * Refuses every request from another device unless that is paired or the route is one of the open ones. What counts is the route that
 * will answer, never the address as it was written: an address has many spellings, and the router knows them all.
 */
export function guardRoutes(app: FastifyInstance, sharing: Sharing | null): void {
	app.addHook('onRequest', async (request) => {
		if (request.is404) {
			// Answered before its body is read: nobody's bytes are worth work for an address that does not exist.
			if (!hasNoBody(request.method)) throw noSuchAddress(request);
			return;
		}
		if (OPEN_ROUTES.has(`${request.method} ${request.routeOptions.url}`) || isOnThisComputer(request)) return;
		if (sharing?.isPaired(request.cookies[PAIRING_COOKIE])) return;
		throw new UserError(
			'not-paired',
			'Expected a device that was paired with this wardrobe; this one was not. Enter the code shown on the computer that runs Dyelot.',
		);
	});
}
