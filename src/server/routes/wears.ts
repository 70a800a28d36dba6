import { noteWears } from '../../app/decisions/note-wears.ts';
import { takeBackWear } from '../../app/decisions/take-back-wear.ts';
import { askedBy } from '../asked.ts';
import { wearOperations as operations } from '../operations/wears.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Days on which garments were worn. */
export function wearRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listWears, handler: (request) => servicesOf(request).store.wears(request.query) });
	app.route({
		...operations.noteWears,
		handler: async (request, reply) =>
			reply.code(201).send(await noteWears(servicesOf(request), askedBy(request), request.body)),
	});
	app.route({
		...operations.removeWear,
		handler: (request) => takeBackWear(servicesOf(request), askedBy(request), request.body),
	});
}
