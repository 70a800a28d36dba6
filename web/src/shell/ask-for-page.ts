import { queries, queryOf } from '../api/refresh.ts';
import type { PlaceInSeason } from './addresses.ts';

/** What a page of a season shows beside its report and the garments. */
const BESIDE: Readonly<Partial<Record<PlaceInSeason, readonly string[]>>> = {
	direction: ['inspirations'],
	'line-up': ['line-up'],
	'wish-list': ['wishes'],
	shop: ['candidates'],
	sheet: ['line-up', 'wishes'],
};

/**
 * Asks for what a page of a season shows before anything is drawn. The report comes last: the program works on it longest, and one answer waits for
 * the other there.
 */
export function askForPage(seasonId: string, place: PlaceInSeason): void {
	const ofSeason = [...(BESIDE[place] ?? []), 'report'].map((what) => `/api/seasons/${seasonId}/${what}`);
	for (const path of ['/api/seasons', '/api/garments', ...ofSeason]) void queries.prefetchQuery(queryOf(path));
}
