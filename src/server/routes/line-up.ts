import { chooseLineUp } from '../../app/decisions/choose-line-up.ts';
import { builtLineUp, chosenLineUp, lineUpIf, swapsInLineUp } from '../../app/season-line-up.ts';
import { askedBy } from '../asked.ts';
import { lineUpOperations as operations } from '../operations/line-up.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** The set chosen for the season: kept, built, tried out. */
export function lineUpRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.getLineUp,
		handler: (request) => chosenLineUp(servicesOf(request).store, request.params.id),
	});
	app.route({
		...operations.chooseLineUp,
		handler: (request) => chooseLineUp(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.buildLineUp,
		handler: (request, reply) => {
			// Nobody waits any more: the solver stops too.
			const stop = new AbortController();
			reply.raw.once('close', () => stop.abort());
			return builtLineUp(servicesOf(request), request.params.id, request.body, stop.signal);
		},
	});
	app.route({
		...operations.findSwaps,
		handler: (request) => swapsInLineUp(servicesOf(request), request.params.id, request.body),
	});
	app.route({
		...operations.tryLineUp,
		handler: (request) => lineUpIf(servicesOf(request), request.params.id, request.body),
	});
}
