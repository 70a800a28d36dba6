import type { Fit } from '../fit/fit-result.ts';
import type { Twin } from '../fit/twins.ts';
import type { OutfitRange } from '../pairs/outfit-range.ts';
import type { Partner } from '../pairs/partners.ts';

/** `own`: it is owned already; `ask`: only a better photo could tell. */
export type Recommendation = 'take' | 'think' | 'leave' | 'ask' | 'own';

/** What to do about a candidate, and why. */
export type CandidateRecommendation = {
	readonly recommendation: Recommendation;
	/** Everything that was weighed, in sentences. */
	readonly reasons: readonly string[];
	readonly sentence: string;
};

/** Everything said of a piece found for sale. */
export type CandidateCheck = CandidateFacts & CandidateRecommendation;

/** What is found out about a candidate before anything is recommended. */
export type CandidateFacts = {
	readonly candidateId: string;
	readonly fit: Fit;
	/** The open wish it answers best; null where none. */
	readonly wishId: string | null;
	/** The name of the owned garment that it is, by its very photo or its looks; null where none is. */
	readonly ownedName: string | null;
	/** What of the season it would fill though no wish says so, in a sentence; null where nothing. */
	readonly fills: string | null;
	readonly twins: readonly Twin[];
	readonly partnerCount: number;
	readonly partners: readonly Partner[];
	/** Outfits for the season's days it would add to what the season holds, and as a share of a piece that goes with everything. */
	readonly outfitsAdded: OutfitRange;
	readonly shareOfBest: number;
	/** Price by the wears expected in two years; null where a price is not told. */
	readonly expectedCostPerWear: number | null;
	/** Median cost per wear of what is owned in that slot; null where nothing is known. */
	readonly usualCostPerWear: number | null;
};
