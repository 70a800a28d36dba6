import { type Decided, type Decision, type PhotoRecord, type Store, UNASKED } from '../../src/store/store.ts';
import type { GarmentDetails } from '../../src/wardrobe/words/garment.ts';
import type { Correction } from '../../src/wardrobe/words/reading.ts';

/** Decides without asking anything first, as a test prepares a home; returns what was changed. */
export const decided = async (store: Store, does: Decided, sentence = 'Decided') =>
	(await store.decide(UNASKED, async () => ({ does, sentence, answer: async () => null }))).changed;

/** Puts garments, as one decision. */
export const putGarments = (store: Store, put: GarmentDetails | readonly GarmentDetails[], sentence?: string) =>
	decided(store, { garments: { put: Array.isArray(put) ? put : [put as GarmentDetails] } }, sentence);

/** Takes a photo in, which no decision is about; its record. */
export async function addedPhoto(
	store: Store,
	bytes: Uint8Array,
	about: { readonly originalName: string; readonly mediaType: string; readonly addedAt: string },
): Promise<PhotoRecord> {
	const id = await store.photos.keepOriginal(bytes);
	await store.note(async () => ({ photos: [{ id, sizeBytes: bytes.length, ...about }] }));
	return (await store.photos.get(id))!;
}

/** Corrects a photo, with a mask or without; the photo as this very decision leaves it. */
export async function corrected(store: Store, photoId: string, correction: Correction, mask: Uint8Array | null) {
	const name = mask ? await store.photos.keepMask(photoId, mask) : null;
	const outcome = await store.decide(UNASKED, async () => ({
		does: { corrections: [{ photoId, correction, mask: name }] },
		sentence: 'Corrected a photo',
		answer: async (after) => (await after.photos.get(photoId))!,
	}));
	return outcome.answer;
}

export const undone = async (store: Store): Promise<Decision | null> => (await store.undo()).answer;
export const redone = async (store: Store): Promise<Decision | null> => (await store.redo()).answer;
