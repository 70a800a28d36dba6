import type { HomeReads, Kept, PhotoRecord } from '../store/store.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import type { Garment, GarmentDetails } from '../wardrobe/words/garment.ts';
import { withNames } from '../wardrobe/words/garment-name.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import { wasNamedByProgram } from './named-by-program.ts';

const readingsOf = (photoIds: readonly string[], photos: ReadonlyMap<string, PhotoRecord>): Reading[] =>
	photoIds.flatMap((id) => photos.get(id)?.reading ?? []);

/** A garment with the colours that its photos give it, called as it is stored. */
function garmentFrom(details: Kept<GarmentDetails>, photos: ReadonlyMap<string, PhotoRecord>): Kept<Garment> {
	const appearance = appearanceOf(details.kind, readingsOf(details.photoIds, photos));
	const pattern = details.patternByUser ? { type: details.patternByUser, sure: 1 } : appearance.pattern;
	const originalName = photos.get(details.photoIds[0] ?? '')?.originalName;
	const nameFrom = details.nameFrom ?? (wasNamedByProgram(details.name, originalName) ? 'looks' : 'user');
	return { ...details, nameFrom, ...appearance, pattern };
}

const byId = (photos: readonly PhotoRecord[]) => new Map(photos.map((photo) => [photo.id, photo]));

/** All garments with their colours, and names in the language spoken where nobody named them; two queries, whatever the number of garments. */
export async function loadGarments(home: HomeReads): Promise<Kept<Garment>[]> {
	const details = await home.garments.list();
	const photos = byId(await home.photos.list());
	return withNames(details.map((one) => garmentFrom(one, photos)));
}

/** One garment with its colours, or null. */
export async function loadGarment(home: HomeReads, id: string): Promise<Kept<Garment> | null> {
	const details = await home.garments.get(id);
	return details ? garmentFrom(details, byId(await home.photos.list(details.photoIds))) : null;
}

/** What is stored of all garments, each with the name that it is shown by: a table of garments carries those. */
export async function loadNamedDetails(home: HomeReads): Promise<Kept<GarmentDetails>[]> {
	const [details, shown] = await Promise.all([home.garments.list(), loadGarments(home)]);
	const names = new Map(shown.map(({ id, name }) => [id, name]));
	return details.map((one) => ({ ...one, name: names.get(one.id) ?? one.name }));
}
