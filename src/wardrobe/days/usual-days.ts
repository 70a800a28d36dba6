import type { Season, SeasonDays } from '../words/season.ts';

/**
 * Mean daily minimum and maximum by month, January first, degrees Celsius: Heathrow, United Kingdom, averages 1991 to 2020 (Met Office), from memory and to the whole
 * degree. Only an offer for somebody who has not named two temperatures; nothing is looked up.
 */
const OFFERED_MONTHS: readonly (readonly [minimum: number, maximum: number])[] = [
	[3, 8],
	[3, 9],
	[4, 12],
	[6, 15],
	[9, 18],
	[12, 22],
	[14, 24],
	[14, 23],
	[12, 20],
	[9, 16],
	[6, 11],
	[3, 9],
];

/** Months of the year, 0..11, that a season touches; all of them where its dates cannot be read. */
function monthsOf({ startsOn, endsOn }: Pick<Season, 'startsOn' | 'endsOn'>): number[] {
	const [from, to] = [new Date(startsOn), new Date(endsOn)];
	const count = (to.getUTCFullYear() - from.getUTCFullYear()) * 12 + to.getUTCMonth() - from.getUTCMonth() + 1;
	if (!(count > 0)) return OFFERED_MONTHS.map((_, month) => month);
	return Array.from({ length: Math.min(12, count) }, (_, index) => (from.getUTCMonth() + index) % 12);
}

/** The cold and warm days offered for a season's months: mean of their minima and of their maxima, whole degrees. */
export function offeredDays(season: Pick<Season, 'startsOn' | 'endsOn'>): Pick<SeasonDays, 'coldDay' | 'warmDay'> {
	const months = monthsOf(season).map((month) => OFFERED_MONTHS[month]!);
	return {
		coldDay: Math.min(...months.map(([minimum]) => minimum)),
		warmDay: Math.max(...months.map(([, maximum]) => maximum)),
	};
}

/** Washing once a week. Common practice, no source. */
const USUAL_WASH_DAYS = 7;

/** What a season's days are like: as the user told, else as offered for its months, washing weekly, every day an everyday. */
export const daysOfSeason = (season: Pick<Season, 'startsOn' | 'endsOn' | 'days'>): SeasonDays =>
	season.days ?? {
		...offeredDays(season),
		washEveryDays: USUAL_WASH_DAYS,
		wearsPerWash: {},
		occasions: [{ name: 'everyday', like: 'everyday', daysAWeek: 7 }],
	};
