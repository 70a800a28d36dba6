import { doAgain, restoreFromBin, takeBack } from '../../app/decisions/take-back.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { App } from '../typed-app.ts';

/** Decisions that a list of them shows. */
const SHOWN = 100;

/** What was decided, taking it back, and the bin. */
export function decisionRoutes(app: App, services: Services): void {
	app.route({ ...operations.listDecisions, handler: () => services.store.decisions(SHOWN) });
	app.route({ ...operations.undo, handler: (request) => takeBack(services, askedBy(request)) });
	app.route({ ...operations.redo, handler: (request) => doAgain(services, askedBy(request)) });
	app.route({ ...operations.listBin, handler: () => services.store.bin() });
	app.route({
		...operations.restoreFromBin,
		handler: (request) => restoreFromBin(services, askedBy(request), request.params.id),
	});
}
