import { statusOf } from '../../app/status.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Counts for the page's head, what start-up mended, and the interface's own description. */
export function statusRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.getStatus, handler: (request) => statusOf(servicesOf(request)) });
	app.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger());
}
