import { dayText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import { outOfSeason } from '../days/in-season.ts';
import type { Fit } from '../fit/fit-result.ts';
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
	/** ISO date and days since it is known to the program and owned, and wears are noted at all: before, its wears could not be noted. */
	readonly knownSince: string;
	readonly knownDays: number;
	readonly loner: Loner | null;
	/** The twin that is surely alike and worn more: its name and wears, and the ISO date since which both are here; null where there is none. */
	readonly wornMore: { readonly name: string; readonly wears: number; readonly since: string } | null;
};

/** Days unworn in which two seasons have passed, by the parts of the year a garment serves; 3 stands for all. Common practice, no source. */
const TWO_SEASONS_DAYS: Readonly<Record<1 | 2 | 3, number>> = { 1: 548, 2: 365, 3: 270 };
/** Not worn in half a year, it had its chance. Common practice, no source. */
const HALF_A_YEAR_DAYS = 182;

/** Worn so often in twelve months, a garment is in use. Common practice, no source. */
const WORN_SOME = 3;

type Reason = { readonly weight: number; readonly words: string };

/** Days unworn in which two of its own seasons have passed: the fewer parts of the year it serves, the rarer they come. */
const twoSeasonsDays = ({ yearParts, place }: Garment): number =>
	// What is stored could not be worn meanwhile.
	place === 'stored'
		? TWO_SEASONS_DAYS[1]
		: TWO_SEASONS_DAYS[yearParts.length === 1 || yearParts.length === 2 ? yearParts.length : 3];

/** Since when it is worn out, where that is known. */
const wornOutWords = ({ conditionSince }: Garment): string =>
	conditionSince ? say('sorting.wornOutSince', { date: dayText(conditionSince) }) : say('sorting.wornOut');

/** Reasons to keep have weights above 0, reasons to part below. */
function reasonsFor(
	garment: Garment,
	{ fit, wear, knownSince, knownDays, loner, wornMore }: SortingFacts,
	season: Season,
	wearsNoted: boolean,
): Reason[] {
	const direction = { season: season.name, date: dayText(season.startsOn) };
	const all: (Reason | false)[] = [
		garment.condition === 'worn-out' && { weight: -2, words: wornOutWords(garment) },
		wearsNoted &&
			wear.wears === 0 &&
			knownDays >= HALF_A_YEAR_DAYS && { weight: -1, words: say('sorting.noWear', { date: dayText(knownSince) }) },
		wear.unwornDays !== null &&
			wear.unwornDays > twoSeasonsDays(garment) && {
				weight: -2,
				words: say('sorting.lastWornOn', { date: dayText(wear.lastWorn ?? '') }),
			},
		fit.verdict === 'off' && {
			weight: -1,
			words: say('sorting.off', direction),
		},
		fit.verdict === 'unsure' &&
			fit.likely === 'off' &&
			fit.swatches.length > 0 && { weight: -0.5, words: say('sorting.likelyOff', direction) },
		(loner?.flagged ?? false) && { weight: -1, words: say('sorting.loner') },
		wornMore !== null && {
			weight: -1,
			words: say('sorting.twin', {
				name: wornMore.name,
				wears: say('counts.wears', { count: wornMore.wears }),
				own: wear.wears,
				date: dayText(wornMore.since),
			}),
		},
		garment.loved === 3 && { weight: 3, words: say('sorting.loved') },
		garment.loved === 0 && { weight: -1, words: say('sorting.notLoved') },
		wear.wearsThisYear >= WORN_OFTEN && { weight: 3, words: say('sorting.wornOften', { count: wear.wearsThisYear }) },
		wear.wearsThisYear >= WORN_SOME &&
			wear.wearsThisYear < WORN_OFTEN && { weight: 1, words: say('sorting.wornOften', { count: wear.wearsThisYear }) },
		fit.verdict === 'fits' && { weight: 2, words: say('sorting.fits') },
		fit.verdict === 'unsure' && fit.likely === 'fits' && { weight: 1, words: say('sorting.likelyFits') },
		fit.verdict === 'near' && { weight: 0.5, words: say('sorting.near') },
		fit.verdict === 'unsure' && fit.likely === 'near' && { weight: 0.5, words: say('sorting.likelyNear') },
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
 * Keep on the rail, store, or let go, with reasons. What the user decided to part with stays so. Year-round basics are kept; a piece of another part of the year is stored; what speaks for it, and nothing against, is enough to keep it; without
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
		const key = {
			keep: isStored ? 'sorting.bringBack' : 'sorting.keep',
			store: isStored ? 'sorting.leaveStored' : 'sorting.store',
			'let-go': 'sorting.letGo',
			undecided: facts.wear.wearsThisYear > 0 ? 'sorting.undecidedWorn' : 'sorting.undecided',
		} as const;
		const sentence = say(key[suggestion], {
			reasons: reasons.join('; '),
			wayOut: wayOut ? say(`waysOut.${wayOut}`) : '',
		});
		return { garmentId: garment.id, suggestion, reasons, wayOut, sentence };
	};
	if (garment.place === 'leaving') return answer('let-go', [say('sorting.leaves')]);
	if (garment.basic)
		return answer('keep', [
			say('sorting.basic'),
			...(garment.condition === 'worn-out' ? [say('sorting.basicWornOut')] : []),
		]);
	const out = outOfSeason(garment, season);
	if (out !== null) return answer('store', [out]);
	const reasons = reasonsFor(garment, facts, season, wearsNoted);
	const sum = reasons.reduce((total, { weight }) => total + weight, 0);
	const words = reasons.map((reason) => reason.words);
	if (words.length === 0) return answer('undecided', [say('sorting.nothing')]);
	// What is stored needs more than that to come back.
	const isUnopposed = garment.place !== 'stored' && sum > 0 && reasons.every(({ weight }) => weight > 0);
	if (sum >= KEEP_FROM || isUnopposed) return answer('keep', words);
	if (sum <= LET_GO_FROM || garment.condition === 'worn-out') return answer('let-go', words);
	if (sum <= STORE_FROM) return answer('store', words);
	return answer('undecided', words);
}
