import { keptWords } from '../language/kept-sentence.ts';
import type { ReaderPool, ReadSource } from '../photo/readers/pool.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import type { Light } from '../wardrobe/words/light.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { EventHub } from './events.ts';

/** What reading a photo of a home takes. */
export type PhotoReader = {
	readonly store: Store;
	readonly pool: ReaderPool;
	readonly events: EventHub;
	/** Called after a reading is stored (kind suggestions, what was told of pieces, same-light groups), with the photo as it was before; may enqueue more. */
	readonly onRead: (photo: PhotoRecord, reading: Reading) => Promise<void>;
	/** The light that the photo shares with others, or null. */
	readonly sharedLight: (photo: PhotoRecord) => Promise<Light | null>;
};

/** Reads a photo, keeps what was read or why it could not be, and tells the open pages. A photo that is none is passed over. */
export async function readPhotoOf(reader: PhotoReader, id: string): Promise<'done' | 'changed'> {
	const { store, pool, events } = reader;
	const photo = await store.photos.get(id);
	if (!photo) return 'done';
	const source: ReadSource = (await store.photos.originalPath(id)) ?? (await store.photos.original(id));
	const mask = photo.correction.mask ? await store.photos.derived(id, 'mask') : null;
	const result = await pool.read(source, {
		correction: photo.correction,
		sharedLight: await reader.sharedLight(photo),
		derived: true,
		...(mask ? { mask } : {}),
	});
	// The correction may have changed while the photo was being read: that newer state is read again and wins.
	const latest = await store.photos.get(id);
	if (latest && latest.version !== photo.version) return 'changed';
	if (result.ok) {
		await store.photos.saveReading(id, result.reading, result.derived);
		await reader.onRead(photo, result.reading);
		events.send({ event: 'photo', data: { id, status: 'read' } });
	} else {
		await store.photos.saveFailure(id, { reason: result.reason, message: result.message });
		events.send({ event: 'photo', data: { id, status: 'failed' } });
	}
	return 'done';
}

/** Notes that the program itself failed on a photo. */
export async function noteUnread({ store, events }: Pick<PhotoReader, 'store' | 'events'>, id: string): Promise<void> {
	await store.photos.saveFailure(id, { reason: 'internal', message: keptWords('refusals.readFault') });
	events.send({ event: 'photo', data: { id, status: 'failed' } });
}
