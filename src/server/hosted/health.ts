import type { FastifyInstance } from 'fastify';

/** Addresses for an operator's programs: `/health` while the process answers at all, `/ready` while it can be sent requests. */
export function healthRoutes(
	app: FastifyInstance,
	{ ready, isDraining }: { readonly ready: () => Promise<void>; readonly isDraining: () => boolean },
): void {
	const schema = { hide: true };
	app.get('/health', { schema }, async () => ({ healthy: true }));
	app.get('/ready', { schema }, async (request, reply) => {
		if (isDraining()) return reply.code(503).send({ ready: false, because: 'stopping' });
		try {
			await ready();
			return { ready: true };
		} catch (error) {
			request.log.error(error);
			return reply.code(503).send({ ready: false, because: 'not-reached' });
		}
	});
}
