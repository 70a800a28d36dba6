import type { FastifyInstance } from 'fastify';
import type { Services } from '../../app/services.ts';
import { statusOf } from '../../app/status.ts';

/** Counts for the page's head, what start-up mended, and the interface's own description. */
export function statusRoutes(app: FastifyInstance, services: Services): void {
	app.get('/api/status', () => statusOf(services));
	app.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger());
}
