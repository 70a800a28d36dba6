import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { notFound, UserError } from '../../app/errors.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { type Box, storeCrop } from '../../app/photo-crop.ts';
import type { Services } from '../../app/services.ts';
import { suggestFromPhotos } from '../../app/suggest-from-photos.ts';
import { say } from '../../language/speak.ts';
import type { GarmentDetails } from '../../wardrobe/words/garment.ts';
import { joinedGarment } from '../../wardrobe/words/joined-garment.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import { type ById, byId, exact } from '../schemas/basics.ts';
import { garmentIds, photoId } from '../schemas/garment.ts';

const share = Type.Number({ minimum: 0, maximum: 1 });
const splitBody = exact({
	photoId,
	boxes: Type.Array(exact({ left: share, top: share, right: share, bottom: share }), { minItems: 2, maxItems: 2 }),
});

/** Which photos show which garment: several entries joined into one, a photo that shows two cut apart, a photo given to another garment. */
export function garmentPhotoRoutes(app: FastifyInstance, services: Services): void {
	const { store, events, jobs, newId, now } = services;
	const changed = () => events.send({ event: 'changed', data: { what: 'garments' } });

	const known = knownIn(store.garments, 'garment');
	async function knownWith(id: string, photo: string): Promise<GarmentDetails> {
		const garment = await known(id);
		if (!garment.photoIds.includes(photo)) throw notFound(`photo of ${garment.name}`, photo);
		return garment;
	}
	/** The other garment of a photo that showed two, or of an entry that was two: it lives where the first one does. */
	const otherOf = (garment: GarmentDetails, photoIds: readonly string[]): GarmentDetails =>
		newGarment(newId(), say('kinds.unknown'), now().toISOString(), {
			nameFrom: 'looks',
			photoIds,
			place: garment.place,
			yearParts: garment.yearParts,
		});

	app.post<{ Body: { ids: string[] } }>(
		'/api/garments/merge',
		{ schema: { body: exact({ ids: garmentIds }) } },
		async (request) => {
			const [first, ...rest] = (await Promise.all(request.body.ids.map(known))) as [
				GarmentDetails,
				...GarmentDetails[],
			];
			if (rest.length === 0) throw new UserError('bad-request', 'Expected two or more garments to join; received one.');
			const joined = { ...joinedGarment(first, rest), changedAt: now().toISOString() };
			const gone = rest.map(({ id }) => id);
			// The wears of all count for the one entry.
			const wears = (await store.wears())
				.filter(({ garmentId }) => gone.includes(garmentId))
				.map(({ on }) => ({ garmentId: first.id, on }));
			await store.decide(
				{ garments: { put: [joined], remove: gone }, wears },
				`Joined ${[first, ...rest].map(({ name }) => name).join(' and ')}`.slice(0, 300),
			);
			changed();
			return joined;
		},
	);

	app.post<ById & { Body: { photoId: string; boxes: [Box, Box] } }>(
		'/api/garments/:id/split',
		{ schema: { params: byId, body: splitBody } },
		async (request) => {
			const { photoId: id, boxes } = request.body;
			const garment = await knownWith(request.params.id, id);
			const empty = boxes.find(({ left, top, right, bottom }) => right <= left || bottom <= top);
			if (empty)
				throw new UserError(
					'bad-request',
					`Expected a box with a width and a height round each garment; received one from ${empty.left}, ${empty.top} to ${empty.right}, ${empty.bottom}.`,
				);
			const photo = await store.photos.get(id);
			if (!photo?.reading)
				throw new UserError('conflict', 'Expected a photo that was read, to cut it in two; this one waits to be read.');
			const crops = [await storeCrop(services, photo, boxes[0]), await storeCrop(services, photo, boxes[1])] as const;
			if (crops[0].id === crops[1].id)
				throw new UserError(
					'bad-request',
					'Expected two different boxes, one round each garment; received the same twice.',
				);
			const first: GarmentDetails = {
				...garment,
				photoIds: garment.photoIds.map((one) => (one === id ? crops[0].id : one)),
				// A kind suggested from two garments at once says nothing of one.
				...(garment.kindFrom === 'photo' ? { kindFrom: 'none' as const } : {}),
				changedAt: now().toISOString(),
			};
			const second = otherOf(garment, [crops[1].id]);
			await store.garments.change({ put: [first, second] }, `Made two garments of ${garment.name}`);
			for (const crop of crops) {
				if (crop.status === 'read') await suggestFromPhotos(store, [crop.id]);
				else jobs.enqueue(crop.id);
			}
			changed();
			return { garments: [first, second] };
		},
	);

	app.post<ById & { Body: { photoId: string } }>(
		'/api/garments/:id/part',
		{ schema: { params: byId, body: exact({ photoId }) } },
		async (request) => {
			const { photoId: id } = request.body;
			const garment = await knownWith(request.params.id, id);
			if (garment.photoIds.length < 2)
				throw new UserError(
					'bad-request',
					`Expected two or more photos of ${garment.name}, to give one to another garment; it has one.`,
				);
			const photoIds = garment.photoIds.filter((one) => one !== id);
			const first = { ...garment, photoIds, changedAt: now().toISOString() };
			const second = otherOf(garment, [id]);
			await store.garments.change({ put: [first, second] }, `Parted ${second.name} from ${garment.name}`);
			await suggestFromPhotos(store, [id]);
			changed();
			return { garments: [first, second] };
		},
	);
}
