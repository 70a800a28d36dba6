import type { Collection, PhotoRecord, Store } from '../store/store.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import { garmentName } from '../wardrobe/words/garment-name.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
import type { PatternType } from '../wardrobe/words/reading.ts';
import type { CandidateDetails } from '../wardrobe/words/wish.ts';
import { isNameOfBefore } from './name-of-before.ts';

type Thing = {
	readonly id: string;
	readonly name: string;
	readonly nameFrom?: 'user' | 'looks';
	readonly kind: Kind;
	readonly kindFrom: 'user' | 'photo' | 'none';
	readonly patternByUser?: PatternType | null;
};

/** The thing with the kind that its photo suggests, and a name by its looks, where nobody has said either; null where nothing is new. */
function suggested<T extends Thing>(thing: T, photo: PhotoRecord | undefined): T | null {
	if (!photo?.reading) return null;
	const guess = thing.kindFrom === 'none' ? photo.reading.kindGuesses[0]?.kind : undefined;
	const withKind: T = guess ? { ...thing, kind: guess, kindFrom: 'photo' } : thing;
	const nameFrom = thing.nameFrom ?? (isNameOfBefore(thing.name, photo.originalName) ? 'looks' : 'user');
	if (nameFrom === 'user') return guess ? withKind : null;
	const looks = appearanceOf(withKind.kind, [photo.reading]);
	const pattern = thing.patternByUser ? { type: thing.patternByUser, sure: 1 } : looks.pattern;
	const name = garmentName({ ...looks, pattern, kind: withKind.kind, kindFrom: withKind.kindFrom });
	return guess || name !== thing.name || thing.nameFrom !== nameFrom ? { ...withKind, name, nameFrom } : null;
}

/** Notes what is suggested for things of one kind; only photos that may tell something new are looked up. */
async function suggestAmong<T extends Thing>(
	store: Store,
	things: Collection<T>,
	photoIdOf: (thing: T) => string | undefined,
	some: readonly T[],
	asked: ReadonlySet<string> | null,
): Promise<void> {
	const open = some.flatMap((thing) => {
		const photoId = photoIdOf(thing);
		const isOpen = thing.kindFrom === 'none' || thing.nameFrom !== 'user';
		return photoId !== undefined && isOpen && (asked?.has(photoId) ?? true) ? [{ thing, photoId }] : [];
	});
	const photos = new Map(
		(await store.photos.list(open.map(({ photoId }) => photoId))).map((photo) => [photo.id, photo]),
	);
	for (const { thing, photoId } of open) {
		const better = suggested(thing, photos.get(photoId));
		if (better) await things.note(better);
	}
}

/**
 * Gives the garments and candidates that show one of these photos the kind its reading suggests, and a name by their looks. What a
 * person said is never replaced. Without `photoIds`: all of them, as a decision done again brings things as they first came.
 */
export async function suggestFromPhotos(store: Store, photoIds?: readonly string[]): Promise<void> {
	const asked = photoIds ? new Set(photoIds) : null;
	await suggestAmong(store, store.garments, ({ photoIds }) => photoIds[0], await store.garments.list(), asked);
	await suggestAmong(store, store.candidates, ({ photoId }) => photoId, await store.candidates.list(), asked);
}

/** The same for garments that were just changed: another kind or pattern is another name. */
export const suggestForGarments = (store: Store, garments: readonly GarmentDetails[]): Promise<void> =>
	suggestAmong(store, store.garments, ({ photoIds }) => photoIds[0], garments, null);

/** The same for a candidate that was just changed. */
export const suggestForCandidate = (store: Store, candidate: CandidateDetails): Promise<void> =>
	suggestAmong(store, store.candidates, ({ photoId }) => photoId, [candidate], null);
