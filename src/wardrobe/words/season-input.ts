import type { Garment } from './garment.ts';
import type { Palette } from './palette-colour.ts';
import type { Appearance, Reading } from './reading.ts';
import type { Inspiration, LineUpChoice, Season } from './season.ts';
import type { PairWord, Wear } from './wear.ts';
import type { CandidateDetails, Maker, Wish } from './wish.ts';

/** A piece found for sale with the colours its photo gives. */
export type Candidate = CandidateDetails & Appearance;

/** Everything that the judgements of a season take. */
export type SeasonInput = {
	readonly season: Season;
	readonly palette: Palette;
	readonly inspirations: readonly { readonly inspiration: Inspiration; readonly reading: Reading }[];
	readonly garments: readonly Garment[];
	readonly wishes: readonly Wish[];
	readonly candidates: readonly Candidate[];
	readonly makers: readonly Maker[];
	readonly wears: readonly Wear[];
	readonly pairWords: readonly PairWord[];
	readonly lineUp: LineUpChoice | null;
	/** ISO date. */
	readonly today: string;
	/** The same part of the year before, where there was one. */
	readonly lastYear: { readonly season: Season; readonly palette: Palette } | null;
};

/** What the season holds: the line-up where one was chosen, else everything on the rail. */
export function heldGarments(input: SeasonInput): readonly Garment[] {
	const chosen = new Set(input.lineUp?.garmentIds ?? []);
	return chosen.size > 0
		? input.garments.filter(({ id, place }) => chosen.has(id) && place !== 'gone')
		: input.garments.filter(({ place }) => place === 'rail');
}
