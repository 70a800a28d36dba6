import type { FastifyInstance } from 'fastify';
import { candidateCheckOf, candidatesOf } from '../../app/candidates.ts';
import { binCandidate } from '../../app/decisions/bin-candidate.ts';
import { buyCandidate } from '../../app/decisions/buy-candidate.ts';
import { changeCandidate } from '../../app/decisions/change-candidate.ts';
import { passCandidate } from '../../app/decisions/pass-candidate.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, type Seen, seen } from '../schemas/basics.ts';
import { type CandidateChanges, candidateChanges } from '../schemas/wish.ts';

/** Pieces found for sale: checked, then bought (they become garments) or passed. */
export function candidateRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/candidates', { schema: { params: byId } }, (request) =>
		candidatesOf(services.store, request.params.id),
	);
	app.get<ById>('/api/candidates/:id/check', { schema: { params: byId } }, (request) =>
		candidateCheckOf(services, request.params.id),
	);
	app.patch<ById & { Body: CandidateChanges }>(
		'/api/candidates/:id',
		{ schema: { params: byId, body: candidateChanges } },
		(request) => changeCandidate(services, askedBy(request), request.params.id, request.body),
	);
	app.delete<ById & Seen>('/api/candidates/:id', { schema: { params: byId, querystring: seen } }, (request) =>
		binCandidate(services, askedBy(request), request.params.id, request.query.version),
	);
	app.post<ById>('/api/candidates/:id/bought', { schema: { params: byId } }, (request) =>
		buyCandidate(services, askedBy(request), request.params.id),
	);
	app.post<ById>('/api/candidates/:id/passed', { schema: { params: byId } }, (request) =>
		passCandidate(services, askedBy(request), request.params.id),
	);
}
