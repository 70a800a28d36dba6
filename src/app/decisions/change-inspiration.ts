import { say } from '../../language/speak.ts';
import type { Inspiration } from '../../wardrobe/words/season.ts';
import { changer, KINDS } from './change-one.ts';

/** Names a picture of the board, or puts it in a group. */
export const changeInspiration = changer<Inspiration, Partial<Pick<Inspiration, 'title' | 'group'>>>(
	KINDS.inspiration,
	{
		changed: (inspiration, changes) => ({ ...inspiration, ...changes }),
		sentence: ({ title }) => say('decisions.changedInspiration', { name: title }),
	},
);
