import { addWish } from '../../app/decisions/add-wish.ts';
import { binWish } from '../../app/decisions/bin-wish.ts';
import { changeWish } from '../../app/decisions/change-wish.ts';
import { wishForGap } from '../../app/decisions/wish-from-gap.ts';
import type { Services } from '../../app/services.ts';
import { wishesOf } from '../../app/wish-list.ts';
import { askedBy } from '../asked.ts';
import { wishOperations as operations } from '../operations/wishes.ts';
import type { App } from '../typed-app.ts';

/** The wish list. */
export function wishRoutes(app: App, services: Services): void {
	app.route({ ...operations.listWishes, handler: ({ params }) => wishesOf(services.store, params.id) });
	app.route({
		...operations.addWish,
		handler: async (request, reply) => reply.code(201).send(await addWish(services, askedBy(request), request.body)),
	});
	app.route({
		...operations.wishForGap,
		handler: async (request, reply) =>
			reply.code(201).send(await wishForGap(services, askedBy(request), request.params.id, request.body)),
	});
	app.route({
		...operations.changeWish,
		handler: (request) => changeWish(services, askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeWish,
		handler: (request) => binWish(services, askedBy(request), request.params.id, request.query.version),
	});
}
