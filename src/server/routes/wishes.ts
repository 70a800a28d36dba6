import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { addWish } from '../../app/decisions/add-wish.ts';
import { binWish } from '../../app/decisions/bin-wish.ts';
import { changeWish } from '../../app/decisions/change-wish.ts';
import { wishForGap } from '../../app/decisions/wish-from-gap.ts';
import type { Services } from '../../app/services.ts';
import { wishesOf } from '../../app/wish-list.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact, type Seen, seen } from '../schemas/basics.ts';
import { type WishChanges, wishChanges, wishFields } from '../schemas/wish.ts';

/** The wish list. */
export function wishRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/wishes', { schema: { params: byId } }, (request) =>
		wishesOf(services.store, request.params.id),
	);
	app.post<{ Body: Omit<Wish, 'id' | 'version'> }>(
		'/api/wishes',
		{ schema: { body: exact(wishFields) } },
		async (request, reply) => reply.code(201).send(await addWish(services, askedBy(request), request.body)),
	);
	app.post<ById & { Body: { gapId: string } }>(
		'/api/seasons/:id/wishes/from-gap',
		{ schema: { params: byId, body: exact({ gapId: Type.String({ maxLength: 200 }) }) } },
		async (request, reply) =>
			reply.code(201).send(await wishForGap(services, askedBy(request), request.params.id, request.body)),
	);
	app.patch<ById & { Body: WishChanges }>(
		'/api/wishes/:id',
		{ schema: { params: byId, body: wishChanges } },
		(request) => changeWish(services, askedBy(request), request.params.id, request.body),
	);
	app.delete<ById & Seen>('/api/wishes/:id', { schema: { params: byId, querystring: seen } }, (request) =>
		binWish(services, askedBy(request), request.params.id, request.query.version),
	);
}
