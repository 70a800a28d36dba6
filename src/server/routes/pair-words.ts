import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { notFound, UserError } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { exact, oneOf, orNull } from '../schemas/basics.ts';

const body = exact({ a: Type.String(), b: Type.String(), word: orNull(oneOf(['approved', 'refused'] as const)) });

/** What the user says of two garments together. */
export function pairWordRoutes(app: FastifyInstance, { store, events }: Services): void {
	app.get('/api/pair-words', async () => store.pairWords());
	app.put<{ Body: { a: string; b: string; word: 'approved' | 'refused' | null } }>(
		'/api/pair-words',
		{ schema: { body } },
		async (request) => {
			const { a, b, word } = request.body;
			if (a === b)
				throw new UserError(
					'bad-request',
					'Expected two different garments for a pairing; received the same one twice.',
				);
			const [first, second] = await Promise.all([store.garments.get(a), store.garments.get(b)]);
			if (!first) throw notFound('garment', a);
			if (!second) throw notFound('garment', b);
			const verb = word === 'approved' ? 'Approved' : word === 'refused' ? 'Refused' : 'Took back the word on';
			await store.savePairWord(a, b, word, `${verb} ${first.name} with ${second.name}`);
			events.send({ event: 'changed', data: { what: 'pair-words' } });
			return { saved: true };
		},
	);
}
