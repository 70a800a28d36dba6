import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query';
import { noteProblem } from './pairing-need.ts';
import { get } from './request.ts';

/** Everything the page has fetched. Nothing goes stale by time: the program says when something changed. */
export const queries = new QueryClient({
	queryCache: new QueryCache({ onError: noteProblem }),
	mutationCache: new MutationCache({ onError: noteProblem }),
	defaultOptions: {
		queries: { staleTime: Number.POSITIVE_INFINITY, gcTime: 10 * 60_000, retry: false, refetchOnWindowFocus: false },
	},
});

/** What the program answers at a path, as it is kept: asked for early or by the part that shows it, it is fetched once. */
export const queryOf = <T>(path: string) => ({ queryKey: [path], queryFn: () => get<T>(path) });

let waiting: ReturnType<typeof setTimeout> | null = null;
let dueAt = Number.POSITIVE_INFINITY;

/** Fetches what is on view again once within `withinMs`, however many changes come together. */
export function refreshSoon(withinMs = 120): void {
	const due = performance.now() + withinMs;
	if (waiting !== null && dueAt <= due) return;
	if (waiting !== null) clearTimeout(waiting);
	dueAt = due;
	waiting = setTimeout(() => {
		waiting = null;
		dueAt = Number.POSITIVE_INFINITY;
		void queries.invalidateQueries();
	}, withinMs);
}
