import { say } from '../../src/language/speak.ts';
import type { CandidateCheck } from '../../src/wardrobe/wishes/candidate.ts';
import { checkCandidate } from '../../src/wardrobe/wishes/candidate-check.ts';
import type { Kind } from '../../src/wardrobe/words/kind.ts';
import type { Appearance } from '../../src/wardrobe/words/reading.ts';
import type { SeasonInput } from '../../src/wardrobe/words/season-input.ts';

/** What is told of the piece in hand besides its photo. */
export type Told = {
	readonly kind: Kind;
	/** In the user's own currency; null = not told. */
	readonly price: number | null;
	readonly used: boolean;
};

/** Judges the piece in hand as a piece found for sale is judged at home. */
export const verdictOf = (input: SeasonInput, told: Told, { swatches, pattern, trust }: Appearance): CandidateCheck =>
	checkCandidate(
		{
			...told,
			id: 'piece-in-hand',
			seasonId: input.season.id,
			photoId: 'photo-in-hand',
			name: say('pocket.thisPiece'),
			kindFrom: 'user',
			source: '',
			state: 'open',
			addedAt: input.today,
			swatches,
			pattern,
			trust,
		},
		input,
	);
