import { queries, queryOf } from '../api/refresh.ts';
import type { PlaceInSeason } from './addresses.ts';

type ListOfSeason = 'listInspirations' | 'getLineUp' | 'listWishes' | 'listCandidates';

/** What a page of a season shows beside its report and the garments. */
const BESIDE: Readonly<Partial<Record<PlaceInSeason, readonly ListOfSeason[]>>> = {
	direction: ['listInspirations'],
	'line-up': ['getLineUp'],
	'wish-list': ['listWishes'],
	shop: ['listCandidates'],
	sheet: ['getLineUp', 'listWishes'],
};

/**
 * Asks for what a page of a season shows before anything is drawn. The report comes last: the program works on it longest, and one answer waits for
 * the other there.
 */
export function askForPage(seasonId: string, place: PlaceInSeason): void {
	for (const id of ['listSeasons', 'listGarments'] as const) void queries.prefetchQuery(queryOf(id, {}));
	const given = { params: { id: seasonId } };
	for (const id of [...(BESIDE[place] ?? []), 'getReport'] as const) void queries.prefetchQuery(queryOf(id, given));
}
