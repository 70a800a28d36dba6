import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { notFound, UserError } from '../../app/errors.ts';
import { type Services, todayOf } from '../../app/services.ts';
import type { Wear } from '../../wardrobe/words/wear.ts';
import { exact, isoDate } from '../schemas/basics.ts';

const wear = exact({ garmentId: Type.String({ maxLength: 100 }), on: isoDate });

/** Days on which garments were worn. */
export function wearRoutes(app: FastifyInstance, services: Services): void {
	const { store, events } = services;
	const changed = () => events.send({ event: 'changed', data: { what: 'wears' } });

	app.get<{ Querystring: { from?: string; to?: string } }>(
		'/api/wears',
		{ schema: { querystring: Type.Object({ from: Type.Optional(isoDate), to: Type.Optional(isoDate) }) } },
		async (request) => store.wears(request.query),
	);
	app.post<{ Body: { wears: Wear[] } }>(
		'/api/wears',
		{ schema: { body: exact({ wears: Type.Array(wear, { minItems: 1, maxItems: 1000 }) }) } },
		async (request, reply) => {
			const { wears } = request.body;
			const names = new Map((await store.garments.list()).map((garment) => [garment.id, garment.name]));
			const today = todayOf(services);
			for (const one of wears) {
				if (!names.has(one.garmentId)) throw notFound('garment', one.garmentId);
				if (one.on > today)
					throw new UserError('bad-request', `Expected a day up to today (${today}) for a wear; received ${one.on}.`);
			}
			const first = wears[0]!;
			await store.addWears(
				wears,
				wears.length === 1 ? `Wore ${names.get(first.garmentId)} on ${first.on}` : `Noted ${wears.length} wears`,
			);
			changed();
			return reply.code(201).send({ added: wears.length });
		},
	);
	app.delete<{ Body: Wear }>('/api/wears', { schema: { body: wear } }, async (request) => {
		await store.removeWear(request.body, `Took back a wear on ${request.body.on}`);
		changed();
		return { removed: true };
	});
}
