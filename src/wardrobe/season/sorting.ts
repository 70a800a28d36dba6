import { outOfSeason } from '../days/in-season.ts';
import type { Fit } from '../fit/fit-result.ts';
import type { Twin } from '../fit/twins.ts';
import type { Loner } from '../pairs/loner.ts';
import type { Garment, WayOut } from '../words/garment.ts';
import { type GarmentWear, WORN_OFTEN } from '../words/garment-wears.ts';
import type { Season } from '../words/season.ts';

/** What the program would do with a garment; the user decides. */
export type SortingSuggestion = {
	readonly garmentId: string;
	readonly suggestion: 'keep' | 'store' | 'let-go' | 'undecided';
	/** The weightiest first. */
	readonly reasons: readonly string[];
	/** Way out for a garment that is let go, the user's own where chosen; else null. */
	readonly wayOut: WayOut | null;
	readonly sentence: string;
};

/** What is known of a garment when it is sorted. */
export type SortingFacts = {
	readonly fit: Fit;
	readonly wear: GarmentWear;
	/** Days since it is known to the program and owned: before, its wears could not be noted. */
	readonly knownDays: number;
	readonly loner: Loner | null;
	readonly twin: Twin | null;
	readonly twinIsWornMore: boolean;
};

/** Not worn for a year and a half means two of the same season have passed. */
const TWO_SEASONS_DAYS = 548;
/** Not worn in half a year, it had its chance. Common practice, no source. */
const HALF_A_YEAR_DAYS = 182;

type Reason = { readonly weight: number; readonly words: string };

/** Reasons to keep have weights above 0, reasons to part below. */
function reasonsFor(
	garment: Garment,
	{ fit, wear, knownDays, loner, twin, twinIsWornMore }: SortingFacts,
	wearsNoted: boolean,
): Reason[] {
	const all: (Reason | false)[] = [
		garment.condition === 'worn-out' && { weight: -2, words: 'it is worn out' },
		wearsNoted && wear.wears === 0 && knownDays >= HALF_A_YEAR_DAYS && { weight: -1, words: 'no wear of it is noted' },
		wear.unwornDays !== null &&
			wear.unwornDays > TWO_SEASONS_DAYS && { weight: -2, words: `it was last worn ${wear.unwornDays} days ago` },
		fit.verdict === 'off' && {
			weight: -1,
			words: `it lies off the season's palette (${Math.round(fit.percent)} of 100)`,
		},
		(loner?.flagged ?? false) && { weight: -1, words: 'it may go with nothing else you have' },
		twin?.sureness === 'alike' && twinIsWornMore && { weight: -1, words: 'another nearly the same is worn more' },
		garment.loved === 3 && { weight: 3, words: 'you love it dearly' },
		garment.loved === 0 && { weight: -1, words: 'you said you do not love it' },
		wear.wearsThisYear >= WORN_OFTEN && { weight: 3, words: `worn ${wear.wearsThisYear} times in twelve months` },
		fit.verdict === 'fits' && { weight: 2, words: `it fits the season (${Math.round(fit.percent)} of 100)` },
	];
	return all.filter((reason) => reason !== false).sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
}

function wayOutOf(garment: Garment): WayOut {
	if (garment.wayOut) return garment.wayOut;
	if (garment.condition === 'worn-out') return (garment.loved ?? 0) >= 2 ? 'mend' : 'recycle';
	if (garment.condition === 'worn') return 'give';
	return (garment.price ?? 0) > 0 ? 'sell' : 'swap';
}

/** Sum of reasons from which to keep, and down to which to let go; between them it stays undecided, or is stored. */
const KEEP_FROM = 2;
const LET_GO_FROM = -3;
const STORE_FROM = -2;

/**
 * Keep on the rail, store, or let go, with reasons. What the user decided to part with stays so. Year-round basics are kept; a piece of another part of the year is stored; without
 * enough to go by it stays undecided. `wearsNoted`: whether the user notes wears at all, else not worn means nothing.
 */
export function sortingOf(
	garment: Garment,
	facts: SortingFacts,
	season: Season,
	wearsNoted: boolean,
): SortingSuggestion {
	const answer = (suggestion: SortingSuggestion['suggestion'], reasons: readonly string[]): SortingSuggestion => {
		const wayOut = suggestion === 'let-go' ? wayOutOf(garment) : null;
		const isStored = garment.place === 'stored';
		const words = {
			keep: isStored ? 'Bring it back to the rail' : 'Keep it on the rail',
			store: isStored ? 'Leave it in store' : 'Store it',
			'let-go': `Let it go (${wayOut})`,
			undecided: 'Undecided',
		}[suggestion];
		return { garmentId: garment.id, suggestion, reasons, wayOut, sentence: `${words}: ${reasons.join('; ')}.` };
	};
	if (garment.place === 'leaving') return answer('let-go', ['you decided that it leaves']);
	if (garment.basic) return answer('keep', ['it is a year-round basic']);
	const out = outOfSeason(garment, season);
	if (out !== null) return answer('store', [`it ${out}`]);
	const reasons = reasonsFor(garment, facts, wearsNoted);
	const sum = reasons.reduce((total, { weight }) => total + weight, 0);
	const words = reasons.map((reason) => reason.words);
	if (words.length === 0) return answer('undecided', ['nothing speaks clearly for or against it yet']);
	if (sum >= KEEP_FROM) return answer('keep', words);
	if (sum <= LET_GO_FROM || garment.condition === 'worn-out') return answer('let-go', words);
	if (sum <= STORE_FROM) return answer('store', words);
	return answer('undecided', words);
}
