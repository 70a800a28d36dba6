import type { FastifyInstance } from 'fastify';
import { notFound } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { type ById, byId } from '../schemas/basics.ts';
import { makerFields } from '../schemas/wish.ts';

type Body = { Body: { name: string; notes: string } };

/** Makers the user trusts, for when new is allowed. */
export function makerRoutes(app: FastifyInstance, { store, newId }: Services): void {
	app.get('/api/makers', async () => store.makers.list());
	app.post<Body>('/api/makers', { schema: { body: makerFields } }, async (request, reply) => {
		const maker = { id: newId(), ...request.body };
		await store.makers.put(maker, `Added the maker ${maker.name}`);
		return reply.code(201).send(maker);
	});
	app.put<ById & Body>('/api/makers/:id', { schema: { params: byId, body: makerFields } }, async (request) => {
		if (!(await store.makers.get(request.params.id))) throw notFound('maker', request.params.id);
		const maker = { id: request.params.id, ...request.body };
		await store.makers.put(maker, `Changed the maker ${maker.name}`);
		return maker;
	});
	app.delete<ById>('/api/makers/:id', { schema: { params: byId } }, async (request) => {
		if (!(await store.makers.remove(request.params.id, 'Removed a maker'))) throw notFound('maker', request.params.id);
		return { removed: true };
	});
}
