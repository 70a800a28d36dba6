import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { garmentsThatGoWith } from '../../app/demo-garments.ts';
import { UserError } from '../../app/errors.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import type { Services } from '../../app/services.ts';
import { defaultSeason } from '../../wardrobe/days/season-defaults.ts';
import { seasonReport } from '../../wardrobe/season/report.ts';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { type ById, byId, exact, isoDate, name, oneOf } from '../schemas/basics.ts';
import { type SeasonChanges, seasonChanges } from '../schemas/season.ts';

const newSeason = exact({ name, yearPart: Type.Optional(oneOf(YEAR_PARTS)), startsOn: isoDate, endsOn: isoDate });
const copyBody = exact({ name, startsOn: isoDate, endsOn: isoDate });

function checkDates(season: Pick<Season, 'startsOn' | 'endsOn'>): void {
	if (season.endsOn <= season.startsOn) {
		throw new UserError(
			'bad-request',
			`Expected the season to end after it starts (${season.startsOn}); received ${season.endsOn} as its end.`,
		);
	}
}

/** Seasons: list, change, archive, start one from another, and the season's whole report. */
export function seasonRoutes(app: FastifyInstance, services: Services): void {
	const { store, events, newId, now } = services;
	const changed = () => events.send({ event: 'changed', data: { what: 'seasons' } });

	const known = knownIn(store.seasons, 'season');

	app.get('/api/seasons', async () => store.seasons.list());
	app.get<ById>('/api/seasons/:id', { schema: { params: byId } }, async (request) => known(request.params.id));
	app.post<{ Body: Pick<Season, 'name' | 'startsOn' | 'endsOn'> & Partial<Pick<Season, 'yearPart'>> }>(
		'/api/seasons',
		{ schema: { body: newSeason } },
		async (request, reply) => {
			checkDates(request.body);
			const season = defaultSeason({ id: newId(), addedAt: now().toISOString(), ...request.body });
			await store.seasons.put(season, `Started the season ${season.name}`);
			changed();
			return reply.code(201).send(season);
		},
	);
	app.put<ById & { Body: SeasonChanges }>(
		'/api/seasons/:id',
		{ schema: { params: byId, body: seasonChanges } },
		async (request) => {
			const season = { ...(await known(request.params.id)), ...request.body };
			checkDates(season);
			await store.seasons.put(season, `Changed the season ${season.name}`);
			changed();
			return season;
		},
	);
	app.delete<ById>('/api/seasons/:id', { schema: { params: byId } }, async (request) => {
		const season = await known(request.params.id);
		const garments = await garmentsThatGoWith(store, season.id);
		const what =
			garments.length > 0 ? `demo ${season.name} with its ${garments.length} garments` : `season ${season.name}`;
		await store.decide(
			{ seasons: { remove: [season.id] }, garments: { remove: garments } },
			`Put the ${what} in the bin`,
		);
		changed();
		if (garments.length > 0) events.send({ event: 'changed', data: { what: 'garments' } });
		return { removed: true };
	});
	app.post<ById & { Body: Pick<Season, 'name' | 'startsOn' | 'endsOn'> }>(
		'/api/seasons/:id/copy',
		{ schema: { params: byId, body: copyBody } },
		async (request, reply) => {
			const from = await known(request.params.id);
			checkDates(request.body);
			const season: Season = {
				...from,
				...request.body,
				id: newId(),
				notes: '',
				feltGaps: [],
				archived: false,
				addedAt: now().toISOString(),
			};
			const put = (await store.inspirations.list())
				.filter((one) => one.seasonId === from.id)
				.map((one) => ({ ...one, id: newId(), seasonId: season.id }));
			const palette = await store.palette(from.id);
			await store.decide(
				{
					seasons: { put: [season] },
					inspirations: { put },
					palettes: palette ? [{ seasonId: season.id, palette }] : [],
				},
				`Started the season ${season.name} from ${from.name}`,
			);
			changed();
			return reply.code(201).send(season);
		},
	);
	app.get<ById>('/api/seasons/:id/report', { schema: { params: byId } }, async (request) =>
		seasonReport(await loadSeasonInput(services, await known(request.params.id))),
	);
}
