import type { Language } from '../colour/words/language.ts';
import { inLanguage } from '../language/speak.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import type { Garment, GarmentDetails } from '../wardrobe/words/garment.ts';
import { withNames } from '../wardrobe/words/garment-name.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import { isNameOfBefore } from './name-of-before.ts';

const readingsOf = (photoIds: readonly string[], photos: ReadonlyMap<string, PhotoRecord>): Reading[] =>
	photoIds.flatMap((id) => photos.get(id)?.reading ?? []);

/** A garment with the colours that its photos give it. */
function garmentFrom(details: GarmentDetails, photos: ReadonlyMap<string, PhotoRecord>): Garment {
	const appearance = appearanceOf(details.kind, readingsOf(details.photoIds, photos));
	const pattern = details.patternByUser ? { type: details.patternByUser, sure: 1 } : appearance.pattern;
	const originalName = photos.get(details.photoIds[0] ?? '')?.originalName;
	const nameFrom = details.nameFrom ?? (isNameOfBefore(details.name, originalName) ? 'looks' : 'user');
	return { ...details, nameFrom, ...appearance, pattern };
}

/** All garments with their colours, and names in that language where nobody named them; two queries, whatever the number of garments. */
export async function loadGarments(store: Store, language: Language = 'en-GB'): Promise<Garment[]> {
	const [details, photos] = await Promise.all([store.garments.list(), store.photos.list()]);
	const byId = new Map(photos.map((photo) => [photo.id, photo]));
	return inLanguage(language, () => withNames(details.map((one) => garmentFrom(one, byId))));
}

/** What is stored of all garments, each with the name that it is shown by: a table of garments carries those. */
export async function loadNamedDetails(store: Store): Promise<GarmentDetails[]> {
	const [details, shown] = await Promise.all([store.garments.list(), loadGarments(store)]);
	const names = new Map(shown.map(({ id, name }) => [id, name]));
	return details.map((one) => ({ ...one, name: names.get(one.id) ?? one.name }));
}
