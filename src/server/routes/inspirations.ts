import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { inspirationsOf } from '../../app/board.ts';
import { binInspiration } from '../../app/decisions/bin-inspiration.ts';
import { changeInspiration } from '../../app/decisions/change-inspiration.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact, type Seen, seen, shortText, version } from '../schemas/basics.ts';

const changes = Type.Partial(exact({ title: shortText, group: shortText, version }), { additionalProperties: false });

/** The pictures of a season's board. */
export function inspirationRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/inspirations', { schema: { params: byId } }, (request) =>
		inspirationsOf(services.store, request.params.id),
	);
	app.patch<ById & { Body: { title?: string; group?: string; version?: number } }>(
		'/api/inspirations/:id',
		{ schema: { params: byId, body: changes } },
		(request) => changeInspiration(services, askedBy(request), request.params.id, request.body),
	);
	app.delete<ById & Seen>('/api/inspirations/:id', { schema: { params: byId, querystring: seen } }, (request) =>
		binInspiration(services, askedBy(request), request.params.id, request.query.version),
	);
}
