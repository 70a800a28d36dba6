import { Type } from 'typebox';
import { KIND_NAMES } from '../../wardrobe/words/kind.ts';
import { inspiration } from '../schemas/answers.ts';
import { byId, exact, oneOf, seen, shortText, version } from '../schemas/basics.ts';
import { listOf, removed } from './answers.ts';
import { LOOKING_AT_ONE, REFUSED } from './refusals.ts';

const tags = ['inspirations'];
/** Pieces that a reading can tell of one picture, with room to spare. */
const MOST_PIECES = 100;
const pieceKinds = Type.Array(
	exact({ piece: Type.Integer({ minimum: 0, maximum: MOST_PIECES - 1 }), kind: oneOf(KIND_NAMES) }),
	{
		maxItems: MOST_PIECES,
		description: 'What somebody says of pieces of the picture, counted from 0; it wins over the reading',
	},
);
const changes = Type.Partial(exact({ title: shortText, group: shortText, pieceKinds, version }), {
	additionalProperties: false,
});

export const inspirationOperations = {
	listInspirations: {
		method: 'GET',
		url: '/api/seasons/:id/inspirations',
		schema: {
			operationId: 'listInspirations',
			tags,
			summary: "The pictures of a season's board",
			params: byId,
			response: { 200: listOf(inspiration), ...LOOKING_AT_ONE },
		},
	},
	changeInspiration: {
		method: 'PATCH',
		url: '/api/inspirations/:id',
		schema: {
			operationId: 'changeInspiration',
			tags,
			summary: 'Name or group a picture, or say of which kinds its pieces are',
			params: byId,
			body: changes,
			response: { 200: inspiration, ...REFUSED },
		},
	},
	removeInspiration: {
		method: 'DELETE',
		url: '/api/inspirations/:id',
		schema: {
			operationId: 'removeInspiration',
			tags,
			summary: 'Take a picture off the board',
			params: byId,
			querystring: seen,
			response: { 200: removed, ...REFUSED },
		},
	},
} as const;
