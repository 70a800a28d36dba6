import { say } from '../language/speak.ts';
import { photoFormatOfFile } from '../photo/file/photo-format.ts';
import { dropIncoming, type IncomingFile } from '../store/incoming-file.ts';
import { newGarment } from '../wardrobe/words/new-garment.ts';
import { fileTitle } from './file-title.ts';
import type { IntakeItem, Purpose } from './intake-item.ts';
import type { Services } from './services.ts';
import { suggestFromPhotos } from './suggest-from-photos.ts';

/** A file that came in, and the name that its owner gave it. */
type NamedFile = { readonly incoming: IncomingFile; readonly name: string };

/**
 * Stores one photo and the thing it shows, and queues its reading. A photo that is already known is not stored twice; a
 * file that is no photo is refused with a reason and stores nothing. The file that came in is gone afterwards, whatever became of it.
 */
export async function takeIn(
	services: Services,
	file: NamedFile,
	purpose: Purpose,
	seasonId: string,
): Promise<IntakeItem> {
	try {
		return await keep(services, file, purpose, seasonId);
	} finally {
		await dropIncoming(file.incoming);
	}
}

async function keep(services: Services, file: NamedFile, purpose: Purpose, seasonId: string): Promise<IntakeItem> {
	const { store, events } = services;
	const name = file.name.slice(0, 200);
	const format = await photoFormatOfFile(file.incoming.path);
	if (!format.ok) return { name, ok: false, reason: format.reason, message: format.message };
	const at = services.now().toISOString();
	const photo = await store.photos.addFile(file.incoming, {
		originalName: name,
		mediaType: format.mediaType,
		addedAt: at,
	});
	// A photo that is stored already keeps the time at which it first came.
	const known = photo.addedAt !== at;
	const thingId = await thingFor(services, photo.id, fileTitle(name), purpose, seasonId, at);
	if (photo.status !== 'read') services.jobs.enqueue(photo.id);
	else await suggestFromPhotos(store, [photo.id]);
	events.send({ event: 'changed', data: { what: `${purpose}s` } });
	return { name, ok: true, photoId: photo.id, thingId, known };
}

async function thingFor(
	services: Services,
	photoId: string,
	title: string,
	purpose: Purpose,
	seasonId: string,
	at: string,
): Promise<string> {
	const { store } = services;
	if (purpose === 'garment') {
		const shown = (await store.garments.list()).find((garment) => garment.photoIds.includes(photoId));
		if (shown) return shown.id;
		const id = services.newId();
		const name = say('kinds.unknown');
		await store.garments.put(newGarment(id, name, at, { photoIds: [photoId], nameFrom: 'looks' }), 'Added a garment');
		return id;
	}
	if (purpose === 'inspiration') {
		const shown = (await store.inspirations.list()).find((one) => one.seasonId === seasonId && one.photoId === photoId);
		if (shown) return shown.id;
		const id = services.newId();
		await store.inspirations.put(
			{ id, seasonId, photoId, title, group: '', addedAt: at },
			`Added the inspiration ${title}`,
		);
		return id;
	}
	const id = services.newId();
	const open = {
		nameFrom: 'looks',
		kind: 'shirt',
		kindFrom: 'none',
		price: null,
		used: true,
		source: '',
		state: 'open',
	} as const;
	await store.candidates.put(
		{ id, seasonId, photoId, name: say('kinds.unknown'), addedAt: at, ...open },
		'Added a candidate',
	);
	return id;
}
