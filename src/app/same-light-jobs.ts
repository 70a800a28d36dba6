import { keptWords } from '../language/kept-sentence.ts';
import { inLanguage } from '../language/speak.ts';
import { sameLightGroups } from '../reading/light/same-light.ts';
import { relit, surerLight } from '../reading/light/shown-light.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import { isToldByNeutral, type Light } from '../wardrobe/words/light.ts';
import { errorOfShared } from '../wardrobe/words/light-error.ts';
import type { Reading } from '../wardrobe/words/reading.ts';

/** Lets photos taken in the same light share the correction that one of them, with a neutral in it, gives. */
export type SameLight = {
	/** The light that the photo's group shares, or null. */
	groupLight(photo: PhotoRecord): Promise<Light | null>;
	/** The light that the photo shares with its group or, where that is surer, with the photos of its ground; or null. */
	sharedLight(photo: PhotoRecord): Promise<Light | null>;
	/** Puts right the stored colours of the photos that share a light with one just read (`before` as it was); nothing is read again. */
	followReading(before: PhotoRecord, reading: Reading): Promise<Followed>;
};

export type Followed = {
	/** Photos whose stored colours changed. */
	readonly relit: readonly string[];
	/** Photos whose reading is too old for that: to be read again. */
	readonly toRead: readonly string[];
};

/** The light was measured on a neutral surface in the picture, so that others of the same light may use it. */
function measuredLight(reading: Reading | null): Light | null {
	const light = reading?.ownLight ?? null;
	return light && isToldByNeutral(light) ? light : null;
}

/** What another photo's light is in a photo that only shares it. */
const asShared = (light: Light): Light => ({
	...light,
	source: 'group',
	reason: keptWords('reports.sharedLight'),
	error: errorOfShared(light.error ?? 0, 'phone'),
});

const needsOthers = (photo: PhotoRecord): boolean =>
	photo.reading !== null && photo.reading.light.source !== 'by-hand' && measuredLight(photo.reading) === null;

/** What the photo's ground told of its light last: that is worked out once all waiting photos are read. */
const keptGround = ({ reading }: PhotoRecord): Light | null =>
	reading?.light.source === 'ground' ? reading.light : null;

export function followSameLight(store: Store): SameLight {
	/** The other photos of its group; groups are worked out anew each time, so that nothing has to be kept in step. Reads only photos near it. */
	async function othersOf({ id, reading, correction }: PhotoRecord): Promise<PhotoRecord[]> {
		const lightGroup = correction.lightGroup ?? null;
		const photos = await store.photos.near({ takenAt: reading?.takenAt ?? null, lightGroup });
		const group = sameLightGroups(
			photos.map(({ id, reading, correction }) => ({
				id,
				reading: reading!,
				lightGroup: correction.lightGroup ?? null,
			})),
		).find((ids) => ids.includes(id));
		return photos.filter((photo) => photo.id !== id && group?.includes(photo.id));
	}

	/** What the user pointed at goes before what was found; then the lowest id, so that the order of reading never matters. */
	function bestOf(photos: readonly PhotoRecord[]): Light | null {
		const lights = photos.flatMap(({ id, reading }) => {
			const light = measuredLight(reading);
			return light ? [{ id, light }] : [];
		});
		const pointed = ({ light }: (typeof lights)[number]) => Number(light.source === 'neutral-pointed');
		const best = lights.sort((a, b) => pointed(b) - pointed(a) || (a.id < b.id ? -1 : 1))[0];
		return best ? asShared(best.light) : null;
	}

	async function groupLight(photo: PhotoRecord): Promise<Light | null> {
		// A photo that was never read has no group yet, so the others need not be loaded.
		return photo.reading === null ? null : bestOf(await othersOf(photo));
	}

	const sharedLight = async (photo: PhotoRecord) => surerLight(await groupLight(photo), keptGround(photo));

	async function followReading(before: PhotoRecord, reading: Reading): Promise<Followed> {
		const others = await othersOf({ ...before, reading });
		const tells = measuredLight(reading) !== null || measuredLight(before.reading) !== null;
		const now = { ...before, reading };
		const followers = [...(tells ? others : []), now].filter(needsOthers);
		const followed = { relit: [] as string[], toRead: [] as string[] };
		for (const photo of followers) {
			const ofGroup = bestOf([...others, now].filter(({ id }) => id !== photo.id));
			const shared = surerLight(ofGroup, keptGround(photo));
			const next = inLanguage('kept', () => relit(photo.reading!, photo.correction, shared));
			if (!next) followed.toRead.push(photo.id);
			else if (JSON.stringify(next.light) !== JSON.stringify(photo.reading!.light)) {
				await store.photos.saveReading(photo.id, next, {});
				followed.relit.push(photo.id);
			}
		}
		return followed;
	}

	return { groupLight, sharedLight, followReading };
}
