import { Type } from 'typebox';
import { KIND_NAMES } from '../../wardrobe/words/kind.ts';
import { inspiration } from '../schemas/answers.ts';
import { exact, oneOf, shortText, version } from '../schemas/basics.ts';
import { listOf } from './answers.ts';
import { get, named, patch, removeEntry } from './operation.ts';

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

export const inspirationOperations = named('inspirations', {
	listInspirations: get('/api/seasons/:id/inspirations', "The pictures of a season's board", listOf(inspiration)),
	changeInspiration: patch(
		'/api/inspirations/:id',
		'Name or group a picture, or say of which kinds its pieces are',
		inspiration,
		{ body: changes },
	),
	removeInspiration: removeEntry('/api/inspirations/:id', 'Take a picture off the board'),
});
