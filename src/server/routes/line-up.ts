import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import { proveLineUp } from '../../app/prove-line-up.ts';
import type { Services } from '../../app/services.ts';
import { buildLineUp } from '../../wardrobe/line-up/line-up.ts';
import type { LineUpRequest } from '../../wardrobe/line-up/line-up-setup.ts';
import { swapsFor } from '../../wardrobe/line-up/swaps.ts';
import { whatIf } from '../../wardrobe/line-up/what-if.ts';
import type { Quotas } from '../../wardrobe/words/season.ts';
import { type ById, byId, exact } from '../schemas/basics.ts';
import { quotasSchema } from '../schemas/season.ts';

const ids = Type.Array(Type.String({ maxLength: 100 }), { maxItems: 2000 });
const buildBody = exact({
	quotas: Type.Optional(quotasSchema),
	targetCount: Type.Optional(Type.Integer({ minimum: 1, maximum: 500 })),
	mustKeep: ids,
	neverUse: ids,
	prove: Type.Optional(Type.Boolean()),
	/** With `prove`: the set to prove, as it stands. */
	garmentIds: Type.Optional(ids),
});
type BuildBody = {
	quotas?: Quotas;
	targetCount?: number;
	mustKeep: string[];
	neverUse: string[];
	prove?: boolean;
	garmentIds?: string[];
};

/** The set chosen for the season: kept, built, tried out. */
export function lineUpRoutes(app: FastifyInstance, services: Services): void {
	const { store, events } = services;

	const known = knownIn(store.seasons, 'season');

	app.get<ById>('/api/seasons/:id/line-up', { schema: { params: byId } }, async (request) => {
		const season = await known(request.params.id);
		return (await store.lineUp(season.id)) ?? { seasonId: season.id, garmentIds: [], mustKeep: [], neverUse: [] };
	});
	app.put<ById & { Body: { garmentIds: string[]; mustKeep: string[]; neverUse: string[] } }>(
		'/api/seasons/:id/line-up',
		{ schema: { params: byId, body: exact({ garmentIds: ids, mustKeep: ids, neverUse: ids }) } },
		async (request) => {
			const season = await known(request.params.id);
			const choice = { seasonId: season.id, ...request.body };
			await store.saveLineUp(choice, `Chose ${choice.garmentIds.length} garments for ${season.name}`);
			events.send({ event: 'changed', data: { what: 'line-up' } });
			return choice;
		},
	);
	app.post<ById & { Body: BuildBody }>(
		'/api/seasons/:id/line-up/build',
		{ schema: { params: byId, body: buildBody } },
		async (request, reply) => {
			const season = await known(request.params.id);
			const { prove, garmentIds = [], ...wanted } = request.body;
			const input = await loadSeasonInput(services, season);
			const lineUpRequest: LineUpRequest = { quotas: season.quotas, targetCount: season.targetCount, ...wanted };
			if (!prove) return buildLineUp(input, lineUpRequest);
			// Nobody waits any more: the solver stops too.
			const stop = new AbortController();
			reply.raw.once('close', () => stop.abort());
			return proveLineUp(input, lineUpRequest, { garmentIds, signal: stop.signal });
		},
	);
	app.post<ById & { Body: { garmentIds: string[]; garmentId: string } }>(
		'/api/seasons/:id/line-up/swaps',
		{ schema: { params: byId, body: exact({ garmentIds: ids, garmentId: Type.String({ maxLength: 100 }) }) } },
		async (request) => swapsFor(await loadSeasonInput(services, await known(request.params.id)), request.body),
	);
	app.post<ById & { Body: { garmentIds: string[]; remove: string[]; add: string[] } }>(
		'/api/seasons/:id/line-up/what-if',
		{ schema: { params: byId, body: exact({ garmentIds: ids, remove: ids, add: ids }) } },
		async (request) => whatIf(await loadSeasonInput(services, await known(request.params.id)), request.body),
	);
}
