import { keptWords } from '../../language/kept-sentence.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { changer, KINDS } from './change-one.ts';
import { refuseWrongDates } from './season-dates.ts';

/** Changes a season's dates, numbers, notes. */
export const changeSeason = changer<Season, Partial<Omit<Season, 'id' | 'addedAt' | 'version'>>>(KINDS.season, {
	changed: (season, changes) => {
		const changed = { ...season, ...changes };
		refuseWrongDates(changed);
		return changed;
	},
	sentence: ({ name }) => keptWords('decisions.changedSeason', { name }),
});
