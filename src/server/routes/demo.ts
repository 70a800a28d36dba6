import { loadDemo } from '../../app/load-demo.ts';
import { askedBy } from '../asked.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** The demo wardrobe with one click. */
export function demoRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.loadDemo,
		handler: async (request, reply) => reply.code(201).send(await loadDemo(servicesOf(request), askedBy(request))),
	});
}
