import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { noteWears } from '../../app/decisions/note-wears.ts';
import { takeBackWear } from '../../app/decisions/take-back-wear.ts';
import type { Services } from '../../app/services.ts';
import type { Wear } from '../../wardrobe/words/wear.ts';
import { askedBy } from '../asked.ts';
import { exact, isoDate } from '../schemas/basics.ts';

const wear = exact({ garmentId: Type.String({ maxLength: 100 }), on: isoDate });

/** Days on which garments were worn. */
export function wearRoutes(app: FastifyInstance, services: Services): void {
	app.get<{ Querystring: { from?: string; to?: string } }>(
		'/api/wears',
		{ schema: { querystring: Type.Object({ from: Type.Optional(isoDate), to: Type.Optional(isoDate) }) } },
		(request) => services.store.wears(request.query),
	);
	app.post<{ Body: { wears: Wear[] } }>(
		'/api/wears',
		{ schema: { body: exact({ wears: Type.Array(wear, { minItems: 1, maxItems: 1000 }) }) } },
		async (request, reply) => reply.code(201).send(await noteWears(services, askedBy(request), request.body)),
	);
	app.delete<{ Body: Wear }>('/api/wears', { schema: { body: wear } }, (request) =>
		takeBackWear(services, askedBy(request), request.body),
	);
}
