import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { binSeason } from '../../app/decisions/bin-season.ts';
import { changeSeason } from '../../app/decisions/change-season.ts';
import { copySeason } from '../../app/decisions/copy-season.ts';
import { startSeason } from '../../app/decisions/start-season.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { reportOf } from '../../app/load-season.ts';
import type { Services } from '../../app/services.ts';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact, isoDate, name, oneOf, type Seen, seen } from '../schemas/basics.ts';
import { type SeasonChanges, seasonChanges } from '../schemas/season.ts';

const newSeason = exact({ name, yearPart: Type.Optional(oneOf(YEAR_PARTS)), startsOn: isoDate, endsOn: isoDate });
const copyBody = exact({ name, startsOn: isoDate, endsOn: isoDate });
type Dates = Pick<Season, 'name' | 'startsOn' | 'endsOn'>;

/** Seasons: list, change, archive, start one from another, and the season's whole report. */
export function seasonRoutes(app: FastifyInstance, services: Services): void {
	const { store } = services;
	app.get('/api/seasons', () => store.seasons.list());
	app.get<ById>('/api/seasons/:id', { schema: { params: byId } }, (request) =>
		knownIn(store.seasons, 'season')(request.params.id),
	);
	app.get<ById>('/api/seasons/:id/report', { schema: { params: byId } }, (request) =>
		reportOf(services, request.params.id),
	);
	app.post<{ Body: Dates & Partial<Pick<Season, 'yearPart'>> }>(
		'/api/seasons',
		{ schema: { body: newSeason } },
		async (request, reply) => reply.code(201).send(await startSeason(services, askedBy(request), request.body)),
	);
	app.patch<ById & { Body: SeasonChanges }>(
		'/api/seasons/:id',
		{ schema: { params: byId, body: seasonChanges } },
		(request) => changeSeason(services, askedBy(request), request.params.id, request.body),
	);
	app.delete<ById & Seen>('/api/seasons/:id', { schema: { params: byId, querystring: seen } }, (request) =>
		binSeason(services, askedBy(request), request.params.id, request.query.version),
	);
	app.post<ById & { Body: Dates }>(
		'/api/seasons/:id/copy',
		{ schema: { params: byId, body: copyBody } },
		async (request, reply) =>
			reply.code(201).send(await copySeason(services, askedBy(request), request.params.id, request.body)),
	);
}
