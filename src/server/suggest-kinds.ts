import type { Store } from '../store/store.ts';

/**
 * Gives garments and candidates that show this photo the kind its reading suggests, where nobody has named one.
 * The user's word is never replaced.
 */
export async function suggestKinds(store: Store, photoId: string): Promise<void> {
	const photo = await store.photos.get(photoId);
	const kind = photo?.reading?.kindGuesses[0]?.kind;
	if (!kind) return;
	for (const garment of await store.garments.list()) {
		if (garment.kindFrom === 'none' && garment.photoIds[0] === photoId) {
			await store.garments.put({ ...garment, kind, kindFrom: 'photo' }, `Took ${garment.name} for: ${kind}`);
		}
	}
	for (const candidate of await store.candidates.list()) {
		if (candidate.kindFrom === 'none' && candidate.photoId === photoId) {
			await store.candidates.put({ ...candidate, kind, kindFrom: 'photo' }, `Took ${candidate.name} for: ${kind}`);
		}
	}
}
