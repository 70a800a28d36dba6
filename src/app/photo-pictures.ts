import { say } from '../language/speak.ts';
import type { DerivedName, Store } from '../store/store.ts';
import { notFound, UserError } from './errors.ts';
import { foundIn } from './found-in.ts';
import type { Services } from './services.ts';

/** A picture made from a photo that was read. */
export async function pictureOf(store: Store, id: string, name: DerivedName): Promise<Buffer> {
	const bytes = await store.photos.derived(id, name);
	if (!bytes) throw notFound(say('nouns.pictureOf', { name }), id);
	return Buffer.from(bytes);
}

/** The colour at a point of a photo, in pixels of the upright picture, as its light is corrected now. */
export async function colourAt(services: Services, id: string, at: { readonly x: number; readonly y: number }) {
	const { store, pool, sharedLight } = services;
	const photo = await foundIn(store.photos, 'photo')(id);
	const source = (await store.photos.originalPath(id)) ?? (await store.photos.original(id));
	const result = await pool.read(source, {
		correction: photo.correction,
		sharedLight: await sharedLight(photo),
		at: [{ x: at.x, y: at.y }],
	});
	if (!result.ok) throw new UserError('bad-request', result.message);
	return result.at![0]!;
}
