import { binSeason } from '../../app/decisions/bin-season.ts';
import { changeSeason } from '../../app/decisions/change-season.ts';
import { copySeason } from '../../app/decisions/copy-season.ts';
import { startSeason } from '../../app/decisions/start-season.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { reportOf } from '../../app/load-season.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { seasonOperations as operations } from '../operations/seasons.ts';
import type { App } from '../typed-app.ts';

/** Seasons: list, change, archive, start one from another, and the season's whole report. */
export function seasonRoutes(app: App, services: Services): void {
	const { store } = services;
	app.route({ ...operations.listSeasons, handler: () => store.seasons.list() });
	app.route({ ...operations.getSeason, handler: ({ params }) => knownIn(store.seasons, 'season')(params.id) });
	app.route({ ...operations.getReport, handler: ({ params }) => reportOf(services, params.id) });
	app.route({
		...operations.startSeason,
		handler: async (request, reply) =>
			reply.code(201).send(await startSeason(services, askedBy(request), request.body)),
	});
	app.route({
		...operations.changeSeason,
		handler: (request) => changeSeason(services, askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeSeason,
		handler: (request) => binSeason(services, askedBy(request), request.params.id, request.query.version),
	});
	app.route({
		...operations.copySeason,
		handler: async (request, reply) =>
			reply.code(201).send(await copySeason(services, askedBy(request), request.params.id, request.body)),
	});
}
