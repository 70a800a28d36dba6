import { Type } from 'typebox';
import { pairWord, wear, wearImportAnswer } from '../schemas/answers.ts';
import { exact, isoDate, oneOf, orNull, told } from '../schemas/basics.ts';
import { countOf, listOf, removed } from './answers.ts';
import { LOOKING, REFUSED } from './refusals.ts';
import { takeTable } from './usual.ts';

const tags = ['wears'];
const garmentId = Type.String({ maxLength: 100 });
const oneWear = exact({ garmentId, on: isoDate });

export const wearOperations = {
	listWears: {
		method: 'GET',
		url: '/api/wears',
		schema: {
			operationId: 'listWears',
			tags,
			summary: 'Days on which garments were worn',
			querystring: Type.Object({ from: Type.Optional(isoDate), to: Type.Optional(isoDate) }),
			response: { 200: listOf(wear), ...LOOKING },
		},
	},
	noteWears: {
		method: 'POST',
		url: '/api/wears',
		schema: {
			operationId: 'noteWears',
			tags,
			summary: 'Note wears',
			body: exact({ wears: Type.Array(oneWear, { minItems: 1, maxItems: 1000 }) }),
			response: { 201: countOf('added', 'So many were noted.'), ...REFUSED },
		},
	},
	removeWear: {
		method: 'DELETE',
		url: '/api/wears',
		schema: {
			operationId: 'removeWear',
			tags,
			summary: 'Take back a wear',
			body: oneWear,
			response: { 200: removed, ...REFUSED },
		},
	},
	importWears: takeTable('importWears', '/api/wears/import', tags, 'Wears', wearImportAnswer),
	listPairWords: {
		method: 'GET',
		url: '/api/pair-words',
		schema: {
			operationId: 'listPairWords',
			tags,
			summary: 'What the user said of two garments together',
			response: { 200: listOf(pairWord), ...LOOKING },
		},
	},
	sayOfPair: {
		method: 'PUT',
		url: '/api/pair-words',
		schema: {
			operationId: 'sayOfPair',
			tags,
			summary: 'Say that two garments go together, or do not; null takes it back',
			body: exact({ a: garmentId, b: garmentId, word: orNull(oneOf(['approved', 'refused'] as const)) }),
			response: { 200: told(exact({ saved: Type.Literal(true) }), 'It is noted.'), ...REFUSED },
		},
	},
} as const;
