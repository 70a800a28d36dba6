import type { ChangedEntry } from '../../../src/store/store.ts';
import { addressOfCall } from './call.ts';
import { refreshSoon, refreshTouched } from './refresh.ts';
import type { PhotoEvent } from './touched.ts';

const PHOTOS_WITHIN_MS = 1000;
const CHANGES_WITHIN_MS = 120;

const photoListeners = new Set<(event: PhotoEvent) => void>();

/** Calls `listener` for every photo event; returns the function that stops it. */
export function onPhotoEvent(listener: (event: PhotoEvent) => void): () => void {
	photoListeners.add(listener);
	return () => void photoListeners.delete(listener);
}

let source: EventSource | null = null;

/** Fetches everything on view again where the program cannot tell what was changed; `failed` = a change was refused, so what is shown may be old. */
export function refreshUnheard(failed: boolean): void {
	if (failed || source?.readyState !== EventSource.OPEN) refreshSoon();
}

/** Listens to the program for as long as the page is open. The browser reconnects by itself. */
export function listenToProgram(): () => void {
	const opening = new EventSource(addressOfCall('listenToEvents'));
	source = opening;
	let opened = false;
	opening.addEventListener('open', () => {
		// What changed while the line was down was not heard.
		if (opened) refreshSoon();
		opened = true;
	});
	opening.addEventListener('photo', (message) => {
		const event = JSON.parse(message.data) as PhotoEvent;
		for (const listener of photoListeners) listener(event);
		// Forty photos come in a row: the season is worked out again once a second, not for each.
		refreshTouched({ photos: [event] }, PHOTOS_WITHIN_MS);
	});
	opening.addEventListener('changed', (message) => {
		const { entries } = JSON.parse(message.data) as { entries: readonly ChangedEntry[] };
		refreshTouched({ entries }, CHANGES_WITHIN_MS);
	});
	opening.addEventListener('missed', () => refreshSoon());
	return () => opening.close();
}
