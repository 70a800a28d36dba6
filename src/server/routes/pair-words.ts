import { sayOfPair } from '../../app/decisions/say-of-pair.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { wearOperations as operations } from '../operations/wears.ts';
import type { App } from '../typed-app.ts';

/** What the user says of two garments together. */
export function pairWordRoutes(app: App, services: Services): void {
	app.route({ ...operations.listPairWords, handler: () => services.store.pairWords() });
	app.route({
		...operations.sayOfPair,
		handler: async (request) => sayOfPair(services, askedBy(request), request.body),
	});
}
