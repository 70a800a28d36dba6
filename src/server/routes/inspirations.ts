import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { knownIn } from '../../app/found-or-refused.ts';
import type { Services } from '../../app/services.ts';
import { type ById, byId, exact, shortText } from '../schemas/basics.ts';

const changes = Type.Partial(exact({ title: shortText, group: shortText }), { additionalProperties: false });

/** The pictures of a season's board. */
export function inspirationRoutes(app: FastifyInstance, { store, events }: Services): void {
	const known = knownIn(store.inspirations, 'inspiration');

	app.get<ById>('/api/seasons/:id/inspirations', { schema: { params: byId } }, async (request) =>
		(await store.inspirations.list()).filter((one) => one.seasonId === request.params.id),
	);
	app.put<ById & { Body: { title?: string; group?: string } }>(
		'/api/inspirations/:id',
		{ schema: { params: byId, body: changes } },
		async (request) => {
			const changed = { ...(await known(request.params.id)), ...request.body };
			await store.inspirations.put(changed, `Changed the inspiration ${changed.title}`);
			events.send({ event: 'changed', data: { what: 'inspirations' } });
			return changed;
		},
	);
	app.delete<ById>('/api/inspirations/:id', { schema: { params: byId } }, async (request) => {
		const { id, title } = await known(request.params.id);
		await store.inspirations.remove(id, `Took ${title || 'a picture'} off the board`);
		events.send({ event: 'changed', data: { what: 'inspirations' } });
		return { removed: true };
	});
}
