import type { Services } from '../../app/services.ts';
import { statusOf } from '../../app/status.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { App } from '../typed-app.ts';

/** Counts for the page's head, what start-up mended, and the interface's own description. */
export function statusRoutes(app: App, services: Services): void {
	app.route({ ...operations.getStatus, handler: () => statusOf(services) });
	app.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger());
}
