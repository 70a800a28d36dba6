import { sayOfPair } from '../../app/decisions/say-of-pair.ts';
import { askedBy } from '../asked.ts';
import { wearOperations as operations } from '../operations/wears.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** What the user says of two garments together. */
export function pairWordRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({ ...operations.listPairWords, handler: (request) => servicesOf(request).store.pairWords() });
	app.route({
		...operations.sayOfPair,
		handler: async (request) => sayOfPair(servicesOf(request), askedBy(request), request.body),
	});
}
