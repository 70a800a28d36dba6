import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { addGarment } from '../../app/decisions/add-garment.ts';
import { binGarments } from '../../app/decisions/bin-garments.ts';
import { changeGarment, changeGarments } from '../../app/decisions/change-garments.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadGarment, loadGarments } from '../../app/load-garments.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact, name, type Seen, seen } from '../schemas/basics.ts';
import { type GarmentChanges, garmentChanges, garmentIds, photoId, versionsById } from '../schemas/garment.ts';

const newGarment = exact({ name, photoIds: Type.Optional(Type.Array(photoId, { maxItems: 20 })) });
const changesOfMany = exact({
	ids: garmentIds,
	changes: Type.Partial(garmentChanges, { additionalProperties: false }),
	versions: Type.Optional(versionsById),
});
const several = exact({ ids: garmentIds, versions: Type.Optional(versionsById) });
type Several = { readonly ids: string[]; readonly versions?: Record<string, number> };

/** The wardrobe: list, add, change or put away one or many. */
export function garmentRoutes(app: FastifyInstance, services: Services): void {
	const { store } = services;
	app.get('/api/garments', () => loadGarments(store));
	app.get<ById>('/api/garments/:id', { schema: { params: byId } }, (request) =>
		knownIn({ get: (id) => loadGarment(store, id) }, 'garment')(request.params.id),
	);
	app.post<{ Body: { name: string; photoIds?: string[] } }>(
		'/api/garments',
		{ schema: { body: newGarment } },
		async (request, reply) => reply.code(201).send(await addGarment(services, askedBy(request), request.body)),
	);
	app.patch<ById & { Body: GarmentChanges }>(
		'/api/garments/:id',
		{ schema: { params: byId, body: garmentChanges } },
		(request) => changeGarment(services, askedBy(request), request.params.id, request.body),
	);
	app.patch<{ Body: Several & { changes: GarmentChanges } }>(
		'/api/garments',
		{ schema: { body: changesOfMany } },
		(request) => changeGarments(services, askedBy(request), request.body),
	);
	app.delete<ById & Seen>('/api/garments/:id', { schema: { params: byId, querystring: seen } }, (request) => {
		const { id } = request.params;
		const { version } = request.query;
		return binGarments(services, askedBy(request), {
			ids: [id],
			...(version === undefined ? {} : { versions: { [id]: version } }),
		});
	});
	app.delete<{ Body: Several }>('/api/garments', { schema: { body: several } }, (request) =>
		binGarments(services, askedBy(request), request.body),
	);
}
