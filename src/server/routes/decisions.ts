import { doAgain, restoreFromBin, takeBack } from '../../app/decisions/take-back.ts';
import { askedBy } from '../asked.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Decisions that a list of them shows. */
const SHOWN = 100;

/** What was decided, taking it back, and the bin. */
export function decisionRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listDecisions, handler: (request) => servicesOf(request).store.decisions(SHOWN) });
	app.route({ ...operations.undo, handler: (request) => takeBack(servicesOf(request), askedBy(request)) });
	app.route({ ...operations.redo, handler: (request) => doAgain(servicesOf(request), askedBy(request)) });
	app.route({ ...operations.listBin, handler: (request) => servicesOf(request).store.bin() });
	app.route({
		...operations.restoreFromBin,
		handler: (request) => restoreFromBin(servicesOf(request), askedBy(request), request.params.id),
	});
}
