import { addGarment } from '../../app/decisions/add-garment.ts';
import { binGarments } from '../../app/decisions/bin-garments.ts';
import { changeGarment, changeGarments } from '../../app/decisions/change-garments.ts';
import { foundIn } from '../../app/found-in.ts';
import { loadGarment, loadGarments } from '../../app/load-garments.ts';
import { askedBy } from '../asked.ts';
import { garmentOperations as operations } from '../operations/garments.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** The wardrobe: list, add, change or put away one or many. */
export function garmentRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listGarments, handler: (request) => loadGarments(servicesOf(request).store) });
	app.route({
		...operations.getGarment,
		handler: (request) => {
			const { store } = servicesOf(request);
			return foundIn({ get: (id: string) => loadGarment(store, id) }, 'garment')(request.params.id);
		},
	});
	app.route({
		...operations.addGarment,
		handler: async (request, reply) =>
			reply.code(201).send(await addGarment(servicesOf(request), askedBy(request), request.body)),
	});
	app.route({
		...operations.changeGarment,
		handler: (request) => changeGarment(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.changeGarments,
		handler: (request) => changeGarments(servicesOf(request), askedBy(request), request.body),
	});
	app.route({
		...operations.removeGarment,
		handler: async (request) => {
			const { id } = request.params;
			const { version } = request.query;
			const versions = version === undefined ? {} : { versions: { [id]: version } };
			await binGarments(servicesOf(request), askedBy(request), { ids: [id], ...versions });
			return { removed: true as const };
		},
	});
	app.route({
		...operations.removeGarments,
		handler: (request) => binGarments(servicesOf(request), askedBy(request), request.body),
	});
}
