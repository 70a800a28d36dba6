import { addWish } from '../../app/decisions/add-wish.ts';
import { binWish } from '../../app/decisions/bin-wish.ts';
import { changeWish } from '../../app/decisions/change-wish.ts';
import { wishForGap } from '../../app/decisions/wish-from-gap.ts';
import { wishesOf } from '../../app/wish-list.ts';
import { askedBy } from '../asked.ts';
import { wishOperations as operations } from '../operations/wishes.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** The wish list. */
export function wishRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listWishes, handler: (request) => wishesOf(servicesOf(request).store, request.params.id) });
	app.route({
		...operations.addWish,
		handler: async (request, reply) =>
			reply.code(201).send(await addWish(servicesOf(request), askedBy(request), request.body)),
	});
	app.route({
		...operations.wishForGap,
		handler: async (request, reply) =>
			reply.code(201).send(await wishForGap(servicesOf(request), askedBy(request), request.params.id, request.body)),
	});
	app.route({
		...operations.changeWish,
		handler: (request) => changeWish(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeWish,
		handler: (request) => binWish(servicesOf(request), askedBy(request), request.params.id, request.query.version),
	});
}
