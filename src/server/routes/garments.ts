import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadGarments } from '../../app/load-garments.ts';
import type { Services } from '../../app/services.ts';
import { suggestForGarments } from '../../app/suggest-from-photos.ts';
import type { GarmentDetails } from '../../wardrobe/words/garment.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import { languageOf } from '../language-of.ts';
import { type ById, byId, exact, name } from '../schemas/basics.ts';
import { type GarmentChanges, garmentChanges, garmentIds, photoId } from '../schemas/garment.ts';

/** The wardrobe: list, add, change or put away one or many. */
export function garmentRoutes(app: FastifyInstance, services: Services): void {
	const { store, events, newId, now } = services;
	const changed = () => events.send({ event: 'changed', data: { what: 'garments' } });

	const known = knownIn(store.garments, 'garment');
	/** Naming it or its kind by hand makes that the user's word, whatever the client says of where it came from. */
	const withChanges = (garment: GarmentDetails, changes: GarmentChanges): GarmentDetails => ({
		...garment,
		...changes,
		...(changes.kind && !changes.kindFrom ? { kindFrom: 'user' as const } : {}),
		...(changes.name ? { nameFrom: 'user' as const } : {}),
		changedAt: now().toISOString(),
	});

	app.get('/api/garments', async (request) => loadGarments(store, languageOf(request)));
	app.get<ById>('/api/garments/:id', { schema: { params: byId } }, async (request) => known(request.params.id));
	app.post<{ Body: { name: string; photoIds?: string[] } }>(
		'/api/garments',
		{ schema: { body: exact({ name, photoIds: Type.Optional(Type.Array(photoId, { maxItems: 20 })) }) } },
		async (request, reply) => {
			const garment = newGarment(newId(), request.body.name, now().toISOString(), {
				photoIds: request.body.photoIds ?? [],
			});
			await store.garments.put(garment, `Added the garment ${garment.name}`);
			changed();
			return reply.code(201).send(garment);
		},
	);
	app.put<ById & { Body: GarmentChanges }>(
		'/api/garments/:id',
		{ schema: { params: byId, body: garmentChanges } },
		async (request) => {
			const garment = withChanges(await known(request.params.id), request.body);
			await store.garments.put(garment, `Changed ${garment.name}`);
			await suggestForGarments(store, [garment]);
			changed();
			return known(garment.id);
		},
	);
	app.patch<{ Body: { ids: string[]; changes: GarmentChanges } }>(
		'/api/garments',
		{ schema: { body: exact({ ids: garmentIds, changes: garmentChanges }) } },
		async (request) => {
			const garments = await Promise.all(request.body.ids.map(known));
			const put = garments.map((garment) => withChanges(garment, request.body.changes));
			await store.garments.change({ put }, `Changed ${put.map(({ name }) => name).join(', ')}`.slice(0, 300));
			await suggestForGarments(store, put);
			changed();
			return { changed: request.body.ids.length };
		},
	);
	app.delete<ById>('/api/garments/:id', { schema: { params: byId } }, async (request) => {
		const garment = await known(request.params.id);
		await store.garments.remove(garment.id, `Put ${garment.name} in the bin`);
		changed();
		return { removed: true };
	});
	app.delete<{ Body: { ids: string[] } }>(
		'/api/garments',
		{ schema: { body: exact({ ids: garmentIds }) } },
		async (request) => {
			const garments = await Promise.all(request.body.ids.map(known));
			const names = garments.map(({ name }) => name).join(', ');
			await store.garments.change({ remove: request.body.ids }, `Put ${names} in the bin`.slice(0, 300));
			changed();
			return { removed: garments.length };
		},
	);
}
