import type { YearPart } from './garment.ts';
import type { Quotas, Season } from './season.ts';

/** Pieces a season needs per slot, 33 in all. Common practice, no source; the user's main control from there on. */
const QUOTAS: Readonly<Record<YearPart, Quotas>> = {
	spring: { top: 10, outer: 4, bottom: 6, full: 3, legwear: 3, shoes: 4, accessory: 3 },
	summer: { top: 11, outer: 2, bottom: 7, full: 5, legwear: 0, shoes: 4, accessory: 4 },
	autumn: { top: 10, outer: 4, bottom: 6, full: 3, legwear: 3, shoes: 4, accessory: 3 },
	winter: { top: 10, outer: 4, bottom: 6, full: 2, legwear: 4, shoes: 3, accessory: 4 },
};

const WARMTH: Readonly<Record<YearPart, Season['warmthNeed']>> = { spring: 1, summer: 0, autumn: 2, winter: 3 };

/** The part of the year in which most of a season lies, by its middle; northern calendar, which the user may change. */
export function yearPartOf(startsOn: string, endsOn: string): YearPart {
	const middle = new Date((Date.parse(startsOn) + Date.parse(endsOn)) / 2);
	const month = middle.getUTCMonth();
	return month < 2 || month === 11 ? 'winter' : month < 5 ? 'spring' : month < 8 ? 'summer' : 'autumn';
}

/** A new season with everything set to what such a season usually needs. */
export function defaultSeason(
	given: Pick<Season, 'id' | 'name' | 'startsOn' | 'endsOn' | 'addedAt'> & Partial<Pick<Season, 'yearPart'>>,
): Season {
	const yearPart = given.yearPart ?? yearPartOf(given.startsOn, given.endsOn);
	const quotas = QUOTAS[yearPart];
	return {
		targetCount: Object.values(quotas).reduce((sum, count) => sum + count, 0),
		quotas,
		warmthNeed: WARMTH[yearPart],
		weights: { outfits: 1, fit: 0.3, loved: 0.15 },
		baseCount: null,
		colourCount: null,
		waitingDays: 30,
		notes: '',
		feltGaps: [],
		archived: false,
		...given,
		yearPart,
	};
}
