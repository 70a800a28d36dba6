import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { notFound } from '../../app/errors.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import { type Services, todayOf } from '../../app/services.ts';
import { seasonReport } from '../../wardrobe/season/report.ts';
import { wishFromGap } from '../../wardrobe/wishes/wishes.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { type ById, byId, exact } from '../schemas/basics.ts';
import { type WishChanges, wishChanges, wishFields } from '../schemas/wish.ts';

/** The wish list. */
export function wishRoutes(app: FastifyInstance, services: Services): void {
	const { store, events, newId } = services;
	const changed = () => events.send({ event: 'changed', data: { what: 'wishes' } });
	const known = knownIn(store.wishes, 'wish');
	const knownSeason = knownIn(store.seasons, 'season');

	app.get<ById>('/api/seasons/:id/wishes', { schema: { params: byId } }, async (request) =>
		(await store.wishes.list()).filter((wish) => wish.seasonId === request.params.id),
	);
	app.post<{ Body: Omit<Wish, 'id'> }>(
		'/api/wishes',
		{ schema: { body: exact(wishFields) } },
		async (request, reply) => {
			await knownSeason(request.body.seasonId);
			const wish = { id: newId(), ...request.body };
			await store.wishes.put(wish, `Wished for ${wish.name}`);
			changed();
			return reply.code(201).send(wish);
		},
	);
	app.post<ById & { Body: { gapId: string } }>(
		'/api/seasons/:id/wishes/from-gap',
		{ schema: { params: byId, body: exact({ gapId: Type.String({ maxLength: 200 }) }) } },
		async (request, reply) => {
			const season = await knownSeason(request.params.id);
			const input = await loadSeasonInput(services, season);
			const gap = seasonReport(input).gaps.find((one) => one.id === request.body.gapId);
			if (!gap) throw notFound('gap', request.body.gapId);
			const wish = wishFromGap(gap, input, { id: newId(), today: todayOf(services) });
			await store.wishes.put(wish, `Wished for ${wish.name}, to fill a gap`);
			changed();
			return reply.code(201).send(wish);
		},
	);
	app.put<ById & { Body: WishChanges }>(
		'/api/wishes/:id',
		{ schema: { params: byId, body: wishChanges } },
		async (request) => {
			const wish = { ...(await known(request.params.id)), ...request.body };
			await store.wishes.put(wish, `Changed the wish ${wish.name}`);
			changed();
			return wish;
		},
	);
	app.delete<ById>('/api/wishes/:id', { schema: { params: byId } }, async (request) => {
		const wish = await known(request.params.id);
		await store.wishes.remove(wish.id, `Struck the wish ${wish.name}`);
		changed();
		return { removed: true };
	});
}
