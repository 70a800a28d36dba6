import { keptWords } from '../../language/kept-sentence.ts';
import type { CandidateDetails } from '../../wardrobe/words/wish.ts';
import { KINDS, remover } from './change-one.ts';

/** Puts a piece found for sale in the bin. */
export const binCandidate = remover<CandidateDetails>(KINDS.candidate, ({ name }) =>
	keptWords('decisions.binnedCandidate', { name }),
);
