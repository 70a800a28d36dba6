import { binSeason } from '../../app/decisions/bin-season.ts';
import { changeSeason } from '../../app/decisions/change-season.ts';
import { copySeason } from '../../app/decisions/copy-season.ts';
import { sortAgain, sortGarments } from '../../app/decisions/sort-garments.ts';
import { startSeason } from '../../app/decisions/start-season.ts';
import { foundIn } from '../../app/found-in.ts';
import { reportOf } from '../../app/load-season.ts';
import { partnersInSeason } from '../../app/season-partners.ts';
import { askedBy } from '../asked.ts';
import { seasonOperations as operations } from '../operations/seasons.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Seasons: list, change, archive, start one from another, and the season's whole report. */
export function seasonRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listSeasons, handler: (request) => servicesOf(request).store.seasons.list() });
	app.route({
		...operations.getSeason,
		handler: (request) => foundIn(servicesOf(request).store.seasons, 'season')(request.params.id),
	});
	app.route({ ...operations.getReport, handler: (request) => reportOf(servicesOf(request), request.params.id) });
	app.route({
		...operations.listPartners,
		handler: (request) => partnersInSeason(servicesOf(request), request.params.id, request.query.garmentId),
	});
	app.route({
		...operations.startSeason,
		handler: async (request, reply) =>
			reply.code(201).send(await startSeason(servicesOf(request), askedBy(request), request.body)),
	});
	app.route({
		...operations.changeSeason,
		handler: (request) => changeSeason(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeSeason,
		handler: (request) => binSeason(servicesOf(request), askedBy(request), request.params.id, request.query.version),
	});
	app.route({
		...operations.sortGarments,
		handler: (request) => sortGarments(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.sortAgain,
		handler: (request) => sortAgain(servicesOf(request), askedBy(request), request.params.id),
	});
	app.route({
		...operations.copySeason,
		handler: async (request, reply) =>
			reply.code(201).send(await copySeason(servicesOf(request), askedBy(request), request.params.id, request.body)),
	});
}
