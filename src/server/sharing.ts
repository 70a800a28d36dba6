import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { UserError } from '../app/errors.ts';
import type { Sharing } from '../app/sharing.ts';

export const PAIRING_COOKIE = 'dyelot-paired';
const PAIRING_LIFETIME_S = 30 * 24 * 3600;

const LOOPBACK = new Set(['127.0.0.1', '::1', '::ffff:127.0.0.1']);

/** Lets only paired devices at /api when the program is shared; this computer itself needs no code. */
export function guardSharedApi(app: FastifyInstance, sharing: Sharing): void {
	app.addHook('onRequest', async (request) => {
		if (!request.url.startsWith('/api/') || request.url.startsWith('/api/pair') || LOOPBACK.has(request.ip)) return;
		if (!sharing.isPaired(request.cookies[PAIRING_COOKIE])) {
			throw new UserError(
				'not-paired',
				'Expected a device that was paired with this wardrobe; this one was not. Enter the code shown on the computer that runs Dyelot.',
			);
		}
	});
	app.post<{ Body: { code: string } }>(
		'/api/pair',
		{
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
		if (!LOOPBACK.has(request.ip))
			throw new UserError(
				'not-paired',
				'Expected this request on the computer that runs Dyelot, where the code is shown; it came from another device.',
			);
		return sharing.code();
	});
}
