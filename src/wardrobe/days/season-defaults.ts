import type { YearPart } from '../words/garment.ts';
import { USUAL_WEIGHTS } from '../words/line-up-weights.ts';
import type { Quotas, Season, SeasonDays } from '../words/season.ts';
import { daysOfSeason } from './usual-days.ts';
import { outerNeed } from './warmth-need.ts';

/** The part of the year in which most of a season lies, by its middle; northern calendar, which the user may change. */
export function yearPartOf(startsOn: string, endsOn: string): YearPart {
	const middle = new Date((Date.parse(startsOn) + Date.parse(endsOn)) / 2);
	const month = middle.getUTCMonth();
	return month < 2 || month === 11 ? 'winter' : month < 5 ? 'spring' : month < 8 ? 'summer' : 'autumn';
}

/** Share of the days on which a dress or one-piece is worn, on warm and on cold days, where the wardrobe does not tell; a third pair is spared; a jumper is worn four days. Common practice, no source. */
const FULL_SHARE_WARM = 0.3;
const FULL_SHARE_COLD = 0.15;
const WARM_FROM = 20;
const JUMPERS_UP_TO = 10;
const TIGHTS_UP_TO = 10;

/** Whether a season has days on which one layer is not enough. */
export const hasColdDays = ({ coldDay }: Pick<SeasonDays, 'coldDay'>): boolean => coldDay <= JUMPERS_UP_TO;

/** Jumpers, cardigans and the like over another top that a season needs, where `topDays` of its days are worn in tops. Common practice, no source. */
export const neededLayers = (days: SeasonDays, topDays: number): number =>
	hasColdDays(days) ? Math.ceil(topDays / 4) : 1;

/**
 * Pieces a season needs by slot, so that they last from one wash to the next with one spare: a fresh top a day, a jumper or cardigan over it where it is cold, bottoms for
 * four days each, dresses for two. Shoes and coats by the weather, accessories three. `fullShare`: how often a dress is worn, see `ownFullShare`. Common practice, no source: where the quotas start from.
 */
export function neededPieces(days: SeasonDays, fullShare: number | null = null): Quotas {
	const { washEveryDays, warmDay, coldDay } = days;
	const full = fullShare ?? (warmDay >= WARM_FROM ? FULL_SHARE_WARM : FULL_SHARE_COLD);
	const split = washEveryDays * (1 - full);
	const need = outerNeed(days);
	return {
		top: Math.ceil(split) + 1 + neededLayers(days, split),
		bottom: Math.ceil(split / 4) + 2,
		full: Math.ceil((washEveryDays * full) / 2),
		outer: 1 + (need > 0.2 ? 1 : 0) + (need > 0 ? 1 : 0),
		legwear: coldDay <= TIGHTS_UP_TO ? 3 : 0,
		shoes: 3,
		accessory: 3,
	};
}

/** A new season with everything set to what such a season usually needs; `fullShare` as for {@link neededPieces}. */
export function defaultSeason(
	given: Pick<Season, 'id' | 'name' | 'startsOn' | 'endsOn' | 'addedAt'> & Partial<Pick<Season, 'yearPart' | 'days'>>,
	fullShare: number | null = null,
): Season {
	const quotas = neededPieces(daysOfSeason(given), fullShare);
	return {
		targetCount: Object.values(quotas).reduce((sum, count) => sum + count, 0),
		quotas,
		weights: USUAL_WEIGHTS,
		baseCount: null,
		colourCount: null,
		waitingDays: 30,
		notes: '',
		feltGaps: [],
		archived: false,
		...given,
		yearPart: given.yearPart ?? yearPartOf(given.startsOn, given.endsOn),
	};
}
