import { addMaker } from '../../app/decisions/add-maker.ts';
import { changeMaker } from '../../app/decisions/change-maker.ts';
import { removeMaker } from '../../app/decisions/remove-maker.ts';
import { askedBy } from '../asked.ts';
import { makerOperations as operations } from '../operations/makers.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Makers the user trusts, for when new is allowed. */
export function makerRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listMakers, handler: (request) => servicesOf(request).store.makers.list() });
	app.route({
		...operations.addMaker,
		handler: async (request, reply) =>
			reply.code(201).send(await addMaker(servicesOf(request), askedBy(request), request.body)),
	});
	app.route({
		...operations.changeMaker,
		handler: (request) => changeMaker(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeMaker,
		handler: (request) => removeMaker(servicesOf(request), askedBy(request), request.params.id, request.query.version),
	});
}
