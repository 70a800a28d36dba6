import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { sayOfPair } from '../../app/decisions/say-of-pair.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { exact, oneOf, orNull } from '../schemas/basics.ts';

const garmentId = Type.String({ maxLength: 100 });
const body = exact({ a: garmentId, b: garmentId, word: orNull(oneOf(['approved', 'refused'] as const)) });

/** What the user says of two garments together. */
export function pairWordRoutes(app: FastifyInstance, services: Services): void {
	app.get('/api/pair-words', () => services.store.pairWords());
	app.put<{ Body: { a: string; b: string; word: 'approved' | 'refused' | null } }>(
		'/api/pair-words',
		{ schema: { body } },
		async (request) => sayOfPair(services, askedBy(request), request.body),
	);
}
