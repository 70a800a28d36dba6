import type { FastifyInstance } from 'fastify';
import type { Services } from '../../app/services.ts';

/** Counts for the page's head, what start-up mended, and the interface's own description. */
export function statusRoutes(app: FastifyInstance, services: Services): void {
	app.get('/api/status', async () => {
		const [photos, garments, seasons] = await Promise.all([
			services.store.photos.counts(),
			services.store.garments.count(),
			services.store.seasons.count(),
		]);
		return {
			photos,
			garments,
			seasons,
			sharing: services.sharing !== null,
			findings: services.findings,
		};
	});
	app.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger());
}
