import { keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { GarmentDetails } from '../../wardrobe/words/garment.ts';
import type { PictureBox } from '../../wardrobe/words/reading.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { cropOf } from '../photo-crop.ts';
import type { Services } from '../services.ts';
import { suggestFromPhotos } from '../suggest-from-photos.ts';
import { bothOf, garmentWithPhoto, otherOf, type TwoGarments } from './garment-of-two.ts';

function refuseEmpty(boxes: readonly PictureBox[]): void {
	const empty = boxes.find(({ left, top, right, bottom }) => right <= left || bottom <= top);
	if (empty)
		throw new UserError(
			'bad-request',
			say('refusals.emptyBox', { left: empty.left, top: empty.top, right: empty.right, bottom: empty.bottom }),
		);
}

/** The parts of the photo in the boxes, their bytes kept; no decision knows of them yet. */
async function twoCrops(services: Services, photoId: string, boxes: readonly [PictureBox, PictureBox]) {
	const photo = await services.store.photos.get(photoId);
	if (!photo?.reading) throw new UserError('conflict', say('refusals.cutUnread'));
	const crops = [await cropOf(services, photo, boxes[0]), await cropOf(services, photo, boxes[1])] as const;
	if (crops[0].photo.id === crops[1].photo.id) throw new UserError('bad-request', say('refusals.sameBoxes'));
	return crops;
}

/** Cuts a photo that shows two garments into two photos, each of a garment of its own. */
export async function splitGarment(
	services: Services,
	asked: Asked,
	id: string,
	{ photoId, boxes }: { readonly photoId: string; readonly boxes: readonly [PictureBox, PictureBox] },
): Promise<TwoGarments> {
	refuseEmpty(boxes);
	await garmentWithPhoto(services.store, id, photoId);
	const crops = await twoCrops(services, photoId, boxes);
	const otherId = services.newId();
	const answer = await decide(services, asked, async (home) => {
		const garment = await garmentWithPhoto(home, id, photoId);
		const at = services.now().toISOString();
		const first: GarmentDetails = {
			...garment,
			photoIds: garment.photoIds.map((one) => (one === photoId ? crops[0].photo.id : one)),
			// A kind suggested from two garments at once says nothing of one.
			...(garment.kindFrom === 'photo' ? { kindFrom: 'none' as const } : {}),
			changedAt: at,
		};
		const second = otherOf(garment, [crops[1].photo.id], { id: otherId, at });
		return {
			does: {
				garments: { put: [first, second] },
				photos: crops.map(({ photo }) => photo),
				corrections: crops.flatMap(({ correction }) => correction ?? []),
			},
			sentence: keptWords('decisions.madeTwo', { name: garment.name }),
			answer: (after) => bothOf(after, id, otherId),
		};
	});
	for (const { photo } of crops) {
		if ((await services.store.photos.get(photo.id))?.status === 'read') await suggestFromPhotos(services, [photo.id]);
		else await services.jobs.enqueue(photo.id);
	}
	return answer;
}
