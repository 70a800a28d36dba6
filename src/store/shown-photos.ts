import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './schema.ts';

/** Kinds of things that show photos. */
export const SHOWING_KINDS = ['garment', 'inspiration', 'candidate'] as const;
export type ShowingKind = (typeof SHOWING_KINDS)[number];

const isShowing = (kind: string): kind is ShowingKind => SHOWING_KINDS.some((one) => one === kind);

/** Ids of the photos that a thing of these fields shows. */
export function shownPhotoIds({ photoIds, photoId }: Readonly<Record<string, unknown>>): string[] {
	const ids = Array.isArray(photoIds) ? photoIds : [photoId];
	return [...new Set(ids.filter((id): id is string => typeof id === 'string'))];
}

/** Notes which photos a thing shows, so that what shows a photo is found without reading every thing. */
export async function noteShownPhotos(
	db: Kysely<Tables> | Transaction<Tables>,
	{ kind, id }: { readonly kind: string; readonly id: string },
	fields: Readonly<Record<string, unknown>>,
): Promise<void> {
	if (!isShowing(kind)) return;
	const photoIds = shownPhotoIds(fields);
	await db.deleteFrom('shown_photos').where('kind', '=', kind).where('thing_id', '=', id).execute();
	if (photoIds.length === 0) return;
	await db
		.insertInto('shown_photos')
		.values(photoIds.map((photo_id) => ({ photo_id, kind, thing_id: id })))
		.execute();
}
