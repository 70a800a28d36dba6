import { candidateCheckOf, candidatesOf } from '../../app/candidates.ts';
import { binCandidate } from '../../app/decisions/bin-candidate.ts';
import { buyCandidate } from '../../app/decisions/buy-candidate.ts';
import { changeCandidate } from '../../app/decisions/change-candidate.ts';
import { passCandidate } from '../../app/decisions/pass-candidate.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { wishOperations as operations } from '../operations/wishes.ts';
import type { App } from '../typed-app.ts';

/** Pieces found for sale: checked, then bought (they become garments) or passed. */
export function candidateRoutes(app: App, services: Services): void {
	app.route({ ...operations.listCandidates, handler: ({ params }) => candidatesOf(services.store, params.id) });
	app.route({ ...operations.checkCandidate, handler: ({ params }) => candidateCheckOf(services, params.id) });
	app.route({
		...operations.changeCandidate,
		handler: (request) => changeCandidate(services, askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeCandidate,
		handler: (request) => binCandidate(services, askedBy(request), request.params.id, request.query.version),
	});
	app.route({
		...operations.buyCandidate,
		handler: (request) => buyCandidate(services, askedBy(request), request.params.id),
	});
	app.route({
		...operations.passCandidate,
		handler: (request) => passCandidate(services, askedBy(request), request.params.id),
	});
}
