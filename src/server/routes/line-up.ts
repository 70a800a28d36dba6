import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { chooseLineUp } from '../../app/decisions/choose-line-up.ts';
import { type BuildRequest, builtLineUp, chosenLineUp, lineUpIf, swapsInLineUp } from '../../app/season-line-up.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact, version } from '../schemas/basics.ts';
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
const choiceBody = Type.Partial(exact({ garmentIds: ids, mustKeep: ids, neverUse: ids, version }), {
	additionalProperties: false,
});
type ChoiceBody = { garmentIds?: string[]; mustKeep?: string[]; neverUse?: string[]; version?: number };

/** The set chosen for the season: kept, built, tried out. */
export function lineUpRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/line-up', { schema: { params: byId } }, (request) =>
		chosenLineUp(services.store, request.params.id),
	);
	app.patch<ById & { Body: ChoiceBody }>(
		'/api/seasons/:id/line-up',
		{ schema: { params: byId, body: choiceBody } },
		(request) => chooseLineUp(services, askedBy(request), request.params.id, request.body),
	);
	app.post<ById & { Body: BuildRequest }>(
		'/api/seasons/:id/line-up/build',
		{ schema: { params: byId, body: buildBody } },
		(request, reply) => {
			// Nobody waits any more: the solver stops too.
			const stop = new AbortController();
			reply.raw.once('close', () => stop.abort());
			return builtLineUp(services, request.params.id, request.body, stop.signal);
		},
	);
	app.post<ById & { Body: { garmentIds: string[]; garmentId: string } }>(
		'/api/seasons/:id/line-up/swaps',
		{ schema: { params: byId, body: exact({ garmentIds: ids, garmentId: Type.String({ maxLength: 100 }) }) } },
		(request) => swapsInLineUp(services, request.params.id, request.body),
	);
	app.post<ById & { Body: { garmentIds: string[]; remove: string[]; add: string[] } }>(
		'/api/seasons/:id/line-up/what-if',
		{ schema: { params: byId, body: exact({ garmentIds: ids, remove: ids, add: ids }) } },
		(request) => lineUpIf(services, request.params.id, request.body),
	);
}
