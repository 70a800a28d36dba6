import { keptWords } from '../language/kept-sentence.ts';
import { say } from '../language/speak.ts';
import { photoFormatOfFile } from '../photo/file/photo-format.ts';
import { dropIncoming, type IncomingFile } from '../store/incoming-file.ts';
import type { Asked, Decided, HomeReads, NewPhoto } from '../store/store.ts';
import { newGarment } from '../wardrobe/words/new-garment.ts';
import type { CandidateDetails } from '../wardrobe/words/wish.ts';
import { decide } from './decide.ts';
import { fileTitle } from './file-title.ts';
import { foundIn } from './found-in.ts';
import type { IntakeItem, Purpose } from './intake-item.ts';
import type { Services } from './services.ts';
import { suggestedCandidate, suggestedGarment } from './suggest-from-photos.ts';

/** A file that came in, the name that its owner gave it, and what it is for. `seasonId` is '' where it belongs to none. */
type Arrival = {
	readonly incoming: IncomingFile;
	readonly name: string;
	readonly purpose: Purpose;
	readonly seasonId: string;
};

/** A photo whose bytes are kept, and the id that a new entry which shows it would have. */
type Given = Pick<Arrival, 'purpose' | 'seasonId'> & { readonly photo: NewPhoto; readonly entryId: string };

/**
 * Takes in one photo and the entry it shows, as one decision, and queues its reading. A photo that is already known is not kept twice; a file
 * that is no photo is refused with a reason and nothing of it is kept. The file that came in is gone afterwards, whatever became of it.
 */
export async function takeIn(services: Services, asked: Asked, arrival: Arrival): Promise<IntakeItem> {
	try {
		return await keep(services, asked, arrival);
	} finally {
		await dropIncoming(arrival.incoming);
	}
}

async function keep(services: Services, asked: Asked, arrival: Arrival): Promise<IntakeItem> {
	const { store } = services;
	const { incoming, purpose, seasonId } = arrival;
	const name = arrival.name.slice(0, 200);
	const format = await photoFormatOfFile(incoming.path);
	if (!format.ok) return { name, ok: false, reason: format.reason, message: format.message };
	const id = await store.photos.keepFile(incoming);
	const photo: NewPhoto = {
		id,
		originalName: name,
		mediaType: format.mediaType,
		sizeBytes: incoming.sizeBytes,
		addedAt: services.now().toISOString(),
	};
	const request = `${asked.request} ${purpose} ${seasonId} ${id}`;
	const given = { photo, purpose, seasonId, entryId: services.newId() };
	const item = await decide(services, { ...asked, request }, async (home) => {
		const keptBefore = (await home.photos.get(id)) !== null;
		const { entryId, does } = await entryFor(home, given);
		return {
			does: { ...does, photos: [photo] },
			sentence:
				purpose === 'inspiration'
					? keptWords('decisions.addedInspiration', { name: fileTitle(name) })
					: keptWords(`decisions.added_${purpose}`),
			answer: async (): Promise<IntakeItem> => ({ name, ok: true, photoId: id, entryId, keptBefore }),
		};
	});
	if ((await store.photos.get(id))?.status !== 'read') await services.jobs.enqueue(id);
	return item;
}

/** The entry that shows the photo: the one that does already, or a new one. A picture for sale is a candidate of its own each time. */
async function entryFor(home: HomeReads, given: Given): Promise<{ entryId: string; does: Decided }> {
	const { photo, purpose, seasonId, entryId } = given;
	const unnamed = say('kinds.unknown');
	const { id: photoId, addedAt } = photo;
	if (purpose === 'garment') {
		const [shown] = await home.showing('garment', photoId);
		if (shown) return { entryId: shown, does: {} };
		const garment = newGarment(entryId, unnamed, addedAt, { photoIds: [photoId], nameFrom: 'looks' });
		return { entryId, does: { garments: { put: [await suggestedGarment(home, garment)] } } };
	}
	await foundIn(home.seasons, 'season')(seasonId);
	if (purpose === 'inspiration') {
		for (const shown of await home.showing('inspiration', photoId))
			if ((await home.inspirations.get(shown))?.seasonId === seasonId) return { entryId: shown, does: {} };
		const inspiration = { id: entryId, seasonId, photoId, title: '', titleFrom: 'looks' as const, group: '', addedAt };
		return { entryId, does: { inspirations: { put: [inspiration] } } };
	}
	const told = { kind: 'shirt', kindFrom: 'none', price: null, used: true, source: '', state: 'open' } as const;
	const candidate: CandidateDetails = {
		id: entryId,
		seasonId,
		photoId,
		name: unnamed,
		nameFrom: 'looks',
		addedAt,
		...told,
	};
	return { entryId, does: { candidates: { put: [await suggestedCandidate(home, candidate)] } } };
}
