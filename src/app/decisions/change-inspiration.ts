import { keptWords } from '../../language/kept-sentence.ts';
import type { Inspiration } from '../../wardrobe/words/season.ts';
import { changer, KINDS } from './change-one.ts';

/** Names a picture of the board, puts it in a group, or says of which kinds its pieces are. */
export const changeInspiration = changer<Inspiration, Partial<Pick<Inspiration, 'title' | 'group' | 'pieceKinds'>>>(
	KINDS.inspiration,
	{
		changed: (inspiration, changes) => ({
			...inspiration,
			...changes,
			...(changes.title === undefined ? {} : { titleFrom: changes.title === '' ? 'looks' : 'user' }),
		}),
		sentence: ({ title }) =>
			keptWords('decisions.changedInspiration', { name: title || keptWords('decisions.aPicture') }),
	},
);
