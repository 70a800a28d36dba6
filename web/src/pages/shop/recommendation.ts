import type { Recommendation } from '../../../../src/wardrobe/wishes/candidate.ts';

/** The recommendation in one or two words. */
export const RECOMMENDATION_WORDS: Readonly<Record<Recommendation, string>> = {
	take: 'Take it',
	think: 'Think about it',
	leave: 'Leave it',
	ask: 'Ask for a better photo',
	own: 'You own this',
};
