import type { PhotoRecord, Store } from '../store/store.ts';
import type { Kind } from '../wardrobe/kind.ts';
import { fileTitle, isMachineTitle } from './file-title.ts';

type Thing = { readonly name: string; readonly kind: Kind; readonly kindFrom: 'user' | 'photo' | 'none' };

/** "Dark olive", or "Dark olive 2" where that name is taken. */
function freeName(colour: string, taken: ReadonlySet<string>): string {
	const name = colour.replace(/^\p{L}/u, (first) => first.toUpperCase());
	for (let count = 1; ; count++) {
		const numbered = count === 1 ? name : `${name} ${count}`;
		if (!taken.has(numbered)) return numbered;
	}
}

/** The thing with the kind that its photo suggests, and its main colour for a name, where nobody has named either; null where nothing is new. */
function suggested<T extends Thing>(thing: T, { originalName, reading }: PhotoRecord, all: readonly T[]): T | null {
	const kind = thing.kindFrom === 'none' ? reading?.kindGuesses[0]?.kind : undefined;
	const title = fileTitle(originalName);
	const colour = thing.name === title && isMachineTitle(title) ? reading?.swatches[0]?.name : undefined;
	if (!kind && !colour) return null;
	return {
		...thing,
		...(kind ? { kind, kindFrom: 'photo' } : {}),
		...(colour ? { name: freeName(colour, new Set(all.map(({ name }) => name))) } : {}),
	};
}

/**
 * Gives the garments and candidates that show this photo the kind its reading suggests, and a name instead of the camera's number. What a person
 * said is never replaced.
 */
export async function suggestFromPhoto(store: Store, photoId: string): Promise<void> {
	const photo = await store.photos.get(photoId);
	if (!photo?.reading) return;
	const garments = await store.garments.list();
	for (const garment of garments.filter(({ photoIds }) => photoIds[0] === photoId)) {
		const better = suggested(garment, photo, garments);
		if (better) await store.garments.note(better);
	}
	const candidates = await store.candidates.list();
	for (const candidate of candidates.filter((one) => one.photoId === photoId)) {
		const better = suggested(candidate, photo, candidates);
		if (better) await store.candidates.note(better);
	}
}

/** The same for every garment and candidate whose kind nobody has named: a decision done again brings them as they first came. */
export async function suggestFromPhotos(store: Store): Promise<void> {
	const garments = (await store.garments.list()).filter(({ kindFrom }) => kindFrom === 'none');
	const candidates = (await store.candidates.list()).filter(({ kindFrom }) => kindFrom === 'none');
	const photoIds = [...garments.flatMap((one) => one.photoIds.slice(0, 1)), ...candidates.map((one) => one.photoId)];
	for (const photoId of new Set(photoIds)) await suggestFromPhoto(store, photoId);
}
