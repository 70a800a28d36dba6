import { candidateCheckOf, candidatesOf } from '../../app/candidates.ts';
import { binCandidate } from '../../app/decisions/bin-candidate.ts';
import { buyCandidate } from '../../app/decisions/buy-candidate.ts';
import { changeCandidate } from '../../app/decisions/change-candidate.ts';
import { passCandidate } from '../../app/decisions/pass-candidate.ts';
import { askedBy } from '../asked.ts';
import { candidateOperations as operations } from '../operations/candidates.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Pieces found for sale: checked, then bought (they become garments) or passed. */
export function candidateRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.listCandidates,
		handler: (request) => candidatesOf(servicesOf(request).store, request.params.id),
	});
	app.route({
		...operations.checkCandidate,
		handler: (request) => candidateCheckOf(servicesOf(request), request.params.id),
	});
	app.route({
		...operations.changeCandidate,
		handler: (request) => changeCandidate(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.removeCandidate,
		handler: (request) => binCandidate(servicesOf(request), askedBy(request), request.params.id, request.query.version),
	});
	app.route({
		...operations.buyCandidate,
		handler: (request) => buyCandidate(servicesOf(request), askedBy(request), request.params.id),
	});
	app.route({
		...operations.passCandidate,
		handler: (request) => passCandidate(servicesOf(request), askedBy(request), request.params.id),
	});
}
