import { sayGround } from '../../app/decisions/say-ground.ts';
import { groundSets } from '../../app/grounds.ts';
import { askedBy } from '../asked.ts';
import { groundOperations as operations } from '../operations/grounds.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Beds, floors and walls that photos share: what is known of them, and what the user says. */
export function groundRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listGrounds, handler: (request) => groundSets(servicesOf(request).store) });
	app.route({
		...operations.sayGround,
		handler: (request) => sayGround(servicesOf(request), askedBy(request), request.body),
	});
}
