import type { PhotoRecord, Store } from '../store/store.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import type { Garment, GarmentDetails } from '../wardrobe/words/garment.ts';
import type { Reading } from '../wardrobe/words/reading.ts';

const readingsOf = (photoIds: readonly string[], photos: ReadonlyMap<string, PhotoRecord>): Reading[] =>
	photoIds.flatMap((id) => photos.get(id)?.reading ?? []);

/** A garment with the colours that its photos give it. */
function garmentFrom(details: GarmentDetails, photos: ReadonlyMap<string, PhotoRecord>): Garment {
	const appearance = appearanceOf(details.kind, readingsOf(details.photoIds, photos));
	const pattern = details.patternByUser ? { type: details.patternByUser, sure: 1 } : appearance.pattern;
	return { ...details, ...appearance, pattern };
}

/** All garments with their colours; two queries, whatever the number of garments. */
export async function loadGarments(store: Store): Promise<Garment[]> {
	const [details, photos] = await Promise.all([store.garments.list(), store.photos.list()]);
	const byId = new Map(photos.map((photo) => [photo.id, photo]));
	return details.map((one) => garmentFrom(one, byId));
}
