import type { FastifyInstance } from 'fastify';
import { addMaker } from '../../app/decisions/add-maker.ts';
import { changeMaker } from '../../app/decisions/change-maker.ts';
import { removeMaker } from '../../app/decisions/remove-maker.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, type Seen, seen } from '../schemas/basics.ts';
import { makerChanges, makerFields } from '../schemas/wish.ts';

/** Makers the user trusts, for when new is allowed. */
export function makerRoutes(app: FastifyInstance, services: Services): void {
	app.get('/api/makers', () => services.store.makers.list());
	app.post<{ Body: { name: string; notes: string } }>(
		'/api/makers',
		{ schema: { body: makerFields } },
		async (request, reply) => reply.code(201).send(await addMaker(services, askedBy(request), request.body)),
	);
	app.patch<ById & { Body: { name?: string; notes?: string; version?: number } }>(
		'/api/makers/:id',
		{ schema: { params: byId, body: makerChanges } },
		(request) => changeMaker(services, askedBy(request), request.params.id, request.body),
	);
	app.delete<ById & Seen>('/api/makers/:id', { schema: { params: byId, querystring: seen } }, (request) =>
		removeMaker(services, askedBy(request), request.params.id, request.query.version),
	);
}
