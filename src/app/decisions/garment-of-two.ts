import { say } from '../../language/speak.ts';
import type { HomeReads, Kept } from '../../store/store.ts';
import type { Garment, GarmentDetails } from '../../wardrobe/words/garment.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import { notFound } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { loadGarment } from '../load-garments.ts';

/** The garment, if it shows the photo. */
export async function garmentWithPhoto(home: HomeReads, id: string, photoId: string): Promise<Kept<GarmentDetails>> {
	const garment = await foundIn(home.garments, 'garment')(id);
	if (!garment.photoIds.includes(photoId)) throw notFound(say('nouns.photoOf', { name: garment.name }), photoId);
	return garment;
}

/** The other garment of a photo that showed two, or of an entry that was two: it lives where the first one does. */
export const otherOf = (
	garment: GarmentDetails,
	photoIds: readonly string[],
	{ id, at }: { readonly id: string; readonly at: string },
): GarmentDetails =>
	newGarment(id, say('kinds.unknown'), at, {
		nameFrom: 'looks',
		photoIds,
		place: garment.place,
		yearParts: garment.yearParts,
	});

/** What is answered when one entry became two. */
export type TwoGarments = { readonly garments: readonly [Garment, Garment] };

export const bothOf = async (after: HomeReads, first: string, second: string): Promise<TwoGarments> => ({
	garments: [(await loadGarment(after, first))!, (await loadGarment(after, second))!],
});
