import { useCallback, useSyncExternalStore } from 'react';
import type { DerivedName } from '../../../src/store/store.ts';
import { addressOfCall } from './call.ts';
import { onPhotoEvent } from './live.ts';

/**
 * Addresses of derived pictures carry a number, so that the browser may keep them; it grows when a photo is read again. Each
 * load of the page starts with a number of its own, since a correction may have been made elsewhere meanwhile.
 */
const loadedAt = Date.now();
const readAgain = new Map<string, number>();
const listeners = new Set<() => void>();

onPhotoEvent(({ id, status }) => {
	if (status !== 'read') return;
	readAgain.set(id, (readAgain.get(id) ?? loadedAt) + 1);
	for (const listener of listeners) listener();
});

const subscribe = (listener: () => void) => {
	listeners.add(listener);
	return () => void listeners.delete(listener);
};

/** Address of a picture made from the photo, as of now. */
export const pictureAddress = (photoId: string, name: DerivedName): string =>
	addressOfCall('getPicture', {
		params: { id: photoId, derived: name },
		query: { v: readAgain.get(photoId) ?? loadedAt },
	});

/** The same, kept up to date; null without a photo. */
export function usePicture(photoId: string | undefined, name: DerivedName): string | null {
	const address = useCallback(() => (photoId ? pictureAddress(photoId, name) : null), [photoId, name]);
	return useSyncExternalStore(subscribe, address);
}

const fetchedEarly = new Set<string>();

/** Has the browser fetch a picture that will be shown next, so that it is there at once. */
export function fetchPictureEarly(photoId: string | undefined, name: DerivedName): void {
	if (!photoId) return;
	const address = pictureAddress(photoId, name);
	if (fetchedEarly.has(address)) return;
	fetchedEarly.add(address);
	new Image().src = address;
}
