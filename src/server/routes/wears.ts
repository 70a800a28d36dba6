import { noteWears } from '../../app/decisions/note-wears.ts';
import { takeBackWear } from '../../app/decisions/take-back-wear.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { wearOperations as operations } from '../operations/wears.ts';
import type { App } from '../typed-app.ts';

/** Days on which garments were worn. */
export function wearRoutes(app: App, services: Services): void {
	app.route({ ...operations.listWears, handler: ({ query }) => services.store.wears(query) });
	app.route({
		...operations.noteWears,
		handler: async (request, reply) => reply.code(201).send(await noteWears(services, askedBy(request), request.body)),
	});
	app.route({
		...operations.removeWear,
		handler: (request) => takeBackWear(services, askedBy(request), request.body),
	});
}
