import type { Collection, PhotoRecord, Store } from '../store/store.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
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
function suggested<T extends Thing>(thing: T, photo: PhotoRecord | undefined, taken: ReadonlySet<string>): T | null {
	if (!photo?.reading) return null;
	const kind = thing.kindFrom === 'none' ? photo.reading.kindGuesses[0]?.kind : undefined;
	const title = fileTitle(photo.originalName);
	const colour = thing.name === title && isMachineTitle(title) ? photo.reading.swatches[0]?.name : undefined;
	if (!kind && !colour) return null;
	return {
		...thing,
		...(kind ? { kind, kindFrom: 'photo' } : {}),
		...(colour ? { name: freeName(colour, taken) } : {}),
	};
}

/** Notes what is suggested for things of one kind; only photos that may tell something new are looked up. */
async function suggestAmong<T extends Thing & { readonly id: string }>(
	store: Store,
	things: Collection<T>,
	photoIdOf: (thing: T) => string | undefined,
	asked: ReadonlySet<string> | null,
): Promise<void> {
	const all = await things.list();
	const open = all.flatMap((thing) => {
		const photoId = photoIdOf(thing);
		const isOpen = thing.kindFrom === 'none' || isMachineTitle(thing.name);
		return photoId !== undefined && isOpen && (asked?.has(photoId) ?? true) ? [{ thing, photoId }] : [];
	});
	const photos = new Map(
		(await store.photos.list(open.map(({ photoId }) => photoId))).map((photo) => [photo.id, photo]),
	);
	const taken = new Set(all.map(({ name }) => name));
	for (const { thing, photoId } of open) {
		const better = suggested(thing, photos.get(photoId), taken);
		if (!better) continue;
		taken.add(better.name);
		await things.note(better);
	}
}

/**
 * Gives the garments and candidates that show one of these photos the kind its reading suggests, and a name instead of the camera's number. What a
 * person said is never replaced. Without `photoIds`: all of them, as a decision done again brings things as they first came.
 */
export async function suggestFromPhotos(store: Store, photoIds?: readonly string[]): Promise<void> {
	const asked = photoIds ? new Set(photoIds) : null;
	await suggestAmong(store, store.garments, ({ photoIds }) => photoIds[0], asked);
	await suggestAmong(store, store.candidates, ({ photoId }) => photoId, asked);
}
