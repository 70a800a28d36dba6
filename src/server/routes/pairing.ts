import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { UserError } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { isOnThisComputer, PAIRING_COOKIE } from '../who-may-come-in.ts';

const PAIRING_LIFETIME_S = 30 * 24 * 3600;

/** How a device of the local network gets in; nothing unless the program is shared. */
export function pairingRoutes(app: FastifyInstance, { sharing }: Services): void {
	if (!sharing) return;
	app.post<{ Body: { code: string } }>(
		'/api/pair',
		{
			bodyLimit: BODY_LIMITS.code,
			schema: { body: Type.Object({ code: Type.String({ maxLength: 40 }) }, { additionalProperties: false }) },
			config: { rateLimit: { max: 10, timeWindow: '1 minute' } },
		},
		async (request, reply) => {
			const token = sharing.pair(request.body.code);
			reply.setCookie(PAIRING_COOKIE, token, {
				httpOnly: true,
				sameSite: 'strict',
				path: '/',
				maxAge: PAIRING_LIFETIME_S,
			});
			return { paired: true };
		},
	);
	app.get('/api/pairing-code', async (request) => {
		if (!isOnThisComputer(request))
			throw new UserError(
				'not-paired',
				'Expected this request on the computer that runs Dyelot, where the code is shown; it came from another device.',
			);
		return sharing.code();
	});
}
