import { say } from '../../language/speak.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { knownIn } from '../found-or-refused.ts';
import { changer, KINDS } from './change-one.ts';

/** Changes a wish. */
export const changeWish = changer<Wish, Partial<Omit<Wish, 'id' | 'version'>>>(KINDS.wish, {
	changed: async (wish, changes, home) => {
		if (changes.seasonId !== undefined) await knownIn(home.seasons, 'season')(changes.seasonId);
		return { ...wish, ...changes };
	},
	sentence: ({ name }) => say('decisions.changedWish', { name }),
});
