import { keptWords } from '../../language/kept-sentence.ts';
import type { CandidateDetails } from '../../wardrobe/words/wish.ts';
import { suggestedCandidate } from '../suggest-from-photos.ts';
import { changer, KINDS } from './change-one.ts';

/** What a person may say of a candidate. */
type Told = Partial<Pick<CandidateDetails, 'name' | 'kind' | 'price' | 'used' | 'source' | 'state'>>;

/** Says something of a piece found for sale; naming it or its kind makes that the person's word. */
export const changeCandidate = changer<CandidateDetails, Told>(KINDS.candidate, {
	changed: (candidate, told, home) =>
		suggestedCandidate(home, {
			...candidate,
			...told,
			...(told.kind ? { kindFrom: 'user' as const } : {}),
			...(told.name ? { nameFrom: 'user' as const } : {}),
		}),
	sentence: ({ name }) => keptWords('decisions.changedCandidate', { name }),
});
