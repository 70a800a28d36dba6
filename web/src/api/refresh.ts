import { QueryClient } from '@tanstack/react-query';

/** Everything the page has fetched. Nothing goes stale by time: the program says when something changed. */
export const queries = new QueryClient({
	defaultOptions: {
		queries: { staleTime: Number.POSITIVE_INFINITY, gcTime: 10 * 60_000, retry: false, refetchOnWindowFocus: false },
	},
});

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
