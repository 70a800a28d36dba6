import { inspirationsOf } from '../../app/board.ts';
import { binInspiration } from '../../app/decisions/bin-inspiration.ts';
import { changeInspiration } from '../../app/decisions/change-inspiration.ts';
import { askedBy } from '../asked.ts';
import { inspirationOperations as operations } from '../operations/inspirations.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** The pictures of a season's board. */
export function inspirationRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.listInspirations,
		handler: (request) => inspirationsOf(servicesOf(request).store, request.params.id),
	});
	app.route({
		...operations.changeInspiration,
		handler: (request) => changeInspiration(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeInspiration,
		handler: (request) =>
			binInspiration(servicesOf(request), askedBy(request), request.params.id, request.query.version),
	});
}
