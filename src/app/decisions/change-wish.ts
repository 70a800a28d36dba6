import { keptWords } from '../../language/kept-sentence.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { foundIn } from '../found-in.ts';
import { refuseUnknownColour } from '../refuse-unknown.ts';
import { changer, KINDS } from './change-one.ts';

/** Changes a wish. */
export const changeWish = changer<Wish, Partial<Omit<Wish, 'id' | 'version'>>>(KINDS.wish, {
	changed: async (wish, changes, home) => {
		if (changes.seasonId !== undefined) await foundIn(home.seasons, 'season')(changes.seasonId);
		const changed = { ...wish, ...changes };
		// A colour that the wish has already may be gone from the palette since.
		if (changed.seasonId !== wish.seasonId || changed.paletteColourId !== wish.paletteColourId)
			await refuseUnknownColour(home, changed);
		return changed;
	},
	sentence: ({ name }) => keptWords('decisions.changedWish', { name }),
});
