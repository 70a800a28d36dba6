import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query';
import type { ChangedEntry } from '../../../src/store/store.ts';
import { call, pathTo } from './call.ts';
import type { CalledId } from './operations.ts';
import { noteProblem } from './pairing-need.ts';
import { type PhotoEvent, touchedByEntries, touchedByPhotos } from './touched.ts';

/** Everything the page has fetched. Nothing goes stale by time: the program says when something changed. */
export const queries = new QueryClient({
	queryCache: new QueryCache({ onError: noteProblem }),
	mutationCache: new MutationCache({ onError: noteProblem }),
	defaultOptions: {
		queries: { staleTime: Number.POSITIVE_INFINITY, gcTime: 10 * 60_000, retry: false, refetchOnWindowFocus: false },
	},
});

/** What the program answers to an operation, as it is kept: asked for early or by the part that shows it, it is fetched once. */
export const queryOf = <Id extends CalledId>(id: Id, given: Parameters<typeof call<Id>>[1]) => ({
	queryKey: [pathTo(id, given)],
	queryFn: () => call(id, given),
});

/** What was heard and not fetched yet; `all` = something changed of which nothing was heard. */
type Heard = { readonly entries: ChangedEntry[]; readonly photos: PhotoEvent[]; all: boolean };

let heard: Heard = { entries: [], photos: [], all: false };
let waiting: ReturnType<typeof setTimeout> | null = null;
let dueAt = Number.POSITIVE_INFINITY;

function fetchWithin(withinMs: number): void {
	const due = performance.now() + withinMs;
	if (waiting !== null && dueAt <= due) return;
	if (waiting !== null) clearTimeout(waiting);
	dueAt = due;
	waiting = setTimeout(() => {
		const { entries, photos, all } = heard;
		heard = { entries: [], photos: [], all: false };
		waiting = null;
		dueAt = Number.POSITIVE_INFINITY;
		if (all) void queries.invalidateQueries();
		else
			void queries.invalidateQueries({
				predicate: ({ queryKey }) => touchedByEntries(queryKey, entries) || touchedByPhotos(queryKey, photos),
			});
	}, withinMs);
}

/** Fetches what is on view again once within `withinMs`, however many changes come together. */
export function refreshSoon(withinMs = 120): void {
	heard.all = true;
	fetchWithin(withinMs);
}

/** Fetches again once within `withinMs` what these changes touch, and nothing else. */
export function refreshTouched(
	{
		entries = [],
		photos = [],
	}: { readonly entries?: readonly ChangedEntry[]; readonly photos?: readonly PhotoEvent[] },
	withinMs: number,
): void {
	heard.entries.push(...entries);
	heard.photos.push(...photos);
	fetchWithin(withinMs);
}
