import { sameLightGroups } from '../reading/light/same-light.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import type { Light, Reading } from '../wardrobe/words/reading.ts';

/** Lets photos taken in the same light share the correction that one of them, with a neutral in it, gives. */
export type SameLight = {
	/** The cast that the photo's group shares, or null. */
	groupCast(photo: PhotoRecord): Promise<Light['cast']>;
	/** Photos to read again now that `photo` (as it was before) has been read as `reading`. */
	photosToReadAgain(photo: PhotoRecord, reading: Reading): Promise<string[]>;
};

/** The cast was measured on a neutral surface in the picture, so that others of the same light may use it. */
const isMeasured = (reading: Reading | null): boolean =>
	reading?.light.source === 'neutral-pointed' || reading?.light.source === 'neutral-found';

export function followSameLight(store: Store): SameLight {
	/** The other photos of its group; groups are worked out anew each time, so that nothing has to be kept in step. */
	async function othersOf(id: string): Promise<PhotoRecord[]> {
		const photos = (await store.photos.list()).filter((photo) => photo.reading !== null);
		const group = sameLightGroups(
			photos.map(({ id, reading, correction }) => ({
				id,
				reading: reading!,
				lightGroup: correction.lightGroup ?? null,
			})),
		).find((ids) => ids.includes(id));
		return photos.filter((photo) => photo.id !== id && group?.includes(photo.id));
	}

	return {
		async groupCast(photo) {
			// A photo that was never read has no group yet, so the others need not be loaded.
			if (photo.reading === null) return null;
			const measured = (await othersOf(photo.id)).filter((other) => isMeasured(other.reading));
			// What the user pointed at goes before what was found; then the lowest id, so that the order of reading never matters.
			const best = measured.sort(
				(a, b) =>
					Number(b.reading!.light.source === 'neutral-pointed') -
						Number(a.reading!.light.source === 'neutral-pointed') || (a.id < b.id ? -1 : 1),
			)[0];
			return best?.reading?.light.cast ?? null;
		},
		async photosToReadAgain(photo, reading) {
			const others = await othersOf(photo.id);
			if (isMeasured(reading) || isMeasured(photo.reading)) {
				return others
					.filter((other) => !isMeasured(other.reading) && other.reading?.light.source !== 'by-hand')
					.map((other) => other.id);
			}
			// A first reading could not know its group yet: once more, with what the group knows.
			const firstTime = photo.reading === null;
			return firstTime && reading.light.source !== 'by-hand' && others.some((other) => isMeasured(other.reading))
				? [photo.id]
				: [];
		},
	};
}
