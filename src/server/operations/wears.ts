import { Type } from 'typebox';
import { pairWord, wear, wearImportAnswer } from '../schemas/answers.ts';
import { exact, isoDate, oneOf, orNull, told } from '../schemas/basics.ts';
import { countOf, listOf, removed } from './answers.ts';
import { add, get, named, put, remove, takeTable } from './operation.ts';

const garmentId = Type.String({ maxLength: 100 });
const oneWear = exact({ garmentId, on: isoDate });

export const wearOperations = named('wears', {
	listWears: get('/api/wears', 'Days on which garments were worn', listOf(wear), {
		querystring: Type.Object({ from: Type.Optional(isoDate), to: Type.Optional(isoDate) }),
	}),
	noteWears: add('/api/wears', 'Note wears', countOf('added', 'So many were noted.'), {
		body: exact({ wears: Type.Array(oneWear, { minItems: 1, maxItems: 1000 }) }),
	}),
	removeWear: remove('/api/wears', 'Take back a wear', removed, { body: oneWear }),
	importWears: takeTable('/api/wears/import', 'Wears', wearImportAnswer),
	listPairWords: get('/api/pair-words', 'What the user said of two garments together', listOf(pairWord)),
	sayOfPair: put(
		'/api/pair-words',
		'Say that two garments go together, or do not; null takes it back',
		told(exact({ saved: Type.Literal(true) }), 'It is noted.'),
		{ body: exact({ a: garmentId, b: garmentId, word: orNull(oneOf(['approved', 'refused'] as const)) }) },
	),
});
