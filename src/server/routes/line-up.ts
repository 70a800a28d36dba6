import { chooseLineUp } from '../../app/decisions/choose-line-up.ts';
import { builtLineUp, chosenLineUp, lineUpIf, swapsInLineUp } from '../../app/season-line-up.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { lineUpOperations as operations } from '../operations/line-up.ts';
import type { App } from '../typed-app.ts';

/** The set chosen for the season: kept, built, tried out. */
export function lineUpRoutes(app: App, services: Services): void {
	app.route({ ...operations.getLineUp, handler: ({ params }) => chosenLineUp(services.store, params.id) });
	app.route({
		...operations.chooseLineUp,
		handler: (request) => chooseLineUp(services, askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.buildLineUp,
		handler: ({ params, body }, reply) => {
			// Nobody waits any more: the solver stops too.
			const stop = new AbortController();
			reply.raw.once('close', () => stop.abort());
			return builtLineUp(services, params.id, body, stop.signal);
		},
	});
	app.route({ ...operations.findSwaps, handler: ({ params, body }) => swapsInLineUp(services, params.id, body) });
	app.route({ ...operations.tryLineUp, handler: ({ params, body }) => lineUpIf(services, params.id, body) });
}
