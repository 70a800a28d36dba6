import { YEAR_PARTS, type YearPart } from '../../../../src/wardrobe/words/garment.ts';

/** A season to begin with: the next quarter of the year after `today` (ISO date), with its usual name and dates. */
export function nextSeason(today: string): {
	readonly name: string;
	readonly startsOn: string;
	readonly endsOn: string;
} {
	const year = Number(today.slice(0, 4));
	const month = Number(today.slice(5, 7));
	// Seasons begin in March, June, September and December; in winter (0) the next is the first of the year's parts.
	const next = Math.floor((month % 12) / 3);
	const part: YearPart = YEAR_PARTS[next]!;
	const startMonth = 3 * (next + 1);
	const startYear = startMonth > month ? year : year + 1;
	const end = new Date(Date.UTC(startYear, startMonth + 2, 0));
	const two = (n: number) => String(n).padStart(2, '0');
	return {
		name: `${part[0]!.toUpperCase()}${part.slice(1)} ${startYear}`,
		startsOn: `${startYear}-${two(startMonth)}-01`,
		endsOn: end.toISOString().slice(0, 10),
	};
}

/** The reader's day as an ISO date. */
export function todayHere(now: Date): string {
	const two = (n: number) => String(n).padStart(2, '0');
	return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
