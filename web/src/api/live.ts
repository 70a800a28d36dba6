import { refreshSoon } from './refresh.ts';

/** A photo whose reading ended, or began again. */
export type PhotoEvent = { readonly id: string; readonly status: 'waiting' | 'read' | 'failed' };

const PHOTOS_WITHIN_MS = 1000;

const photoListeners = new Set<(event: PhotoEvent) => void>();

/** Calls `listener` for every photo event; returns the function that stops it. */
export function onPhotoEvent(listener: (event: PhotoEvent) => void): () => void {
	photoListeners.add(listener);
	return () => void photoListeners.delete(listener);
}

/** Listens to the program for as long as the page is open. The browser reconnects by itself. */
export function listenToProgram(): () => void {
	const source = new EventSource('/api/events');
	let opened = false;
	source.addEventListener('open', () => {
		// What changed while the line was down was not heard.
		if (opened) refreshSoon();
		opened = true;
	});
	source.addEventListener('photo', (message) => {
		const event = JSON.parse(message.data) as PhotoEvent;
		for (const listener of photoListeners) listener(event);
		// Forty photos come in a row: the season is worked out again once a second, not for each.
		refreshSoon(PHOTOS_WITHIN_MS);
	});
	source.addEventListener('changed', (message) => {
		if ((JSON.parse(message.data) as { what: string }).what !== 'hello') refreshSoon(PHOTOS_WITHIN_MS / 4);
	});
	return () => source.close();
}
