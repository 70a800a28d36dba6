import { inspirationsOf } from '../../app/board.ts';
import { binInspiration } from '../../app/decisions/bin-inspiration.ts';
import { changeInspiration } from '../../app/decisions/change-inspiration.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { inspirationOperations as operations } from '../operations/inspirations.ts';
import type { App } from '../typed-app.ts';

/** The pictures of a season's board. */
export function inspirationRoutes(app: App, services: Services): void {
	app.route({ ...operations.listInspirations, handler: ({ params }) => inspirationsOf(services.store, params.id) });
	app.route({
		...operations.changeInspiration,
		handler: (request) => changeInspiration(services, askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeInspiration,
		handler: (request) => binInspiration(services, askedBy(request), request.params.id, request.query.version),
	});
}
