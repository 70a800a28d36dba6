import { inLanguage } from '../language/speak.ts';
import { type AgreedGround, agreedGround, type GroundPhoto } from '../reading/ground/agreed-ground.ts';
import { groundLights } from '../reading/ground/ground-lights.ts';
import { sameGroundGroups } from '../reading/ground/same-ground.ts';
import { relit, surerLight } from '../reading/light/shown-light.ts';
import { shownPhotoIds } from '../store/shown-photos.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import type { Light } from '../wardrobe/words/light.ts';
import type { SameLight } from './same-light-jobs.ts';

/** Photos that show one bed, floor or wall, and what is made of it. */
export type GroundSet = AgreedGround & {
	/** In the order of their ids. */
	readonly photoIds: readonly string[];
	/** Whether the user said that some of them share it. */
	readonly told: boolean;
};

type ReadPhoto = PhotoRecord & { readonly reading: NonNullable<PhotoRecord['reading']> };

const isRead = (photo: PhotoRecord): photo is ReadPhoto => photo.reading !== null;

/** The photo as its ground's set knows it; null where it shows no ground, or was read before grounds were looked at. */
function groundPhoto({ id, reading }: ReadPhoto): GroundPhoto | null {
	const { ground, ownLight, uncorrected } = reading;
	if (!ground || !ownLight) return null;
	// Of a light that nothing tells the model is left out exactly where no phone took the picture.
	return { id, ground, ownLight, cloth: uncorrected.slice(0, 1), camera: ownLight.model === null ? 'camera' : 'phone' };
}

/** The photos of each ground that more than one shows. */
function setsOf(photos: readonly PhotoRecord[]): GroundPhoto[][] {
	const read = photos.filter(isRead);
	const groundPhotos = new Map(read.flatMap((photo) => groundPhoto(photo) ?? []).map((photo) => [photo.id, photo]));
	const groups = sameGroundGroups(
		read
			.filter(({ id }) => groundPhotos.has(id))
			.map(({ id, correction }) => ({
				id,
				seen: groundPhotos.get(id)!.ground,
				...(correction.ground === undefined ? {} : { told: correction.ground }),
			})),
	);
	return groups.map((ids) => ids.map((id) => groundPhotos.get(id)!));
}

/** Photos that something of the home shows: of a photo that was split its parts tell of the ground, not both. */
async function shownPhotos(store: Store): Promise<PhotoRecord[]> {
	const things = [
		...(await store.garments.list()),
		...(await store.inspirations.list()),
		...(await store.candidates.list()),
	];
	const shown = new Set(things.flatMap(shownPhotoIds));
	return (await store.photos.list()).filter(({ id }) => shown.has(id));
}

/** The sets of photos that share a ground, the largest first. */
export async function groundSets(store: Store): Promise<GroundSet[]> {
	const photos = await shownPhotos(store);
	const told = new Set(photos.filter(({ correction }) => correction.ground).map(({ id }) => id));
	return setsOf(photos)
		.map((set) => ({
			...agreedGround(set),
			photoIds: set.map(({ id }) => id),
			told: set.some(({ id }) => told.has(id)),
		}))
		.sort((a, b) => b.photoIds.length - a.photoIds.length || (a.photoIds[0]! < b.photoIds[0]! ? -1 : 1));
}

/**
 * Brings the photos of each ground into agreement, by their stored features: nothing is read again. Returns the photos whose stored colours changed. A light of
 * the photo's own and one set by hand stay; of a ground's and a group's the surer counts.
 */
export async function followGrounds(store: Store, sameLight: Pick<SameLight, 'groupLight'>): Promise<string[]> {
	const photos = await shownPhotos(store);
	const lights = inLanguage('kept', () => new Map(setsOf(photos).flatMap((set) => [...groundLights(set)])));
	const changed: string[] = [];
	for (const photo of photos.filter(isRead)) {
		if (!mayChange(photo.reading.light, lights.get(photo.id) ?? null)) continue;
		const shared = surerLight(await sameLight.groupLight(photo), lights.get(photo.id) ?? null);
		const next = inLanguage('kept', () => relit(photo.reading, photo.correction, shared));
		if (!next || JSON.stringify(next.light) === JSON.stringify(photo.reading.light)) continue;
		await store.photos.saveReading(photo.id, next, {});
		changed.push(photo.id);
	}
	return changed;
}

/** Whether a photo's light could be another for what its ground tells now. */
const mayChange = (stored: Light, ground: Light | null): boolean =>
	stored.source === 'ground' || (ground !== null && (stored.source === 'none' || stored.source === 'group'));
