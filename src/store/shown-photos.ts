import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './schema.ts';

/** Kinds of entries that show photos. */
export const SHOWING_KINDS = ['garment', 'inspiration', 'candidate'] as const;
export type ShowingKind = (typeof SHOWING_KINDS)[number];

/** One entry may show many photos; three values a row stay below what a statement takes. */
const ROWS_AT_ONCE = 2000;

export const isShowing = (kind: string): kind is ShowingKind => SHOWING_KINDS.some((one) => one === kind);

/** Ids of the photos that an entry of these fields shows. */
export function shownPhotoIds({ photoIds, photoId }: Readonly<Record<string, unknown>>): string[] {
	const ids = Array.isArray(photoIds) ? photoIds : [photoId];
	return [...new Set(ids.filter((id): id is string => typeof id === 'string'))];
}

/** An entry and the photos that it shows now; of one that `isNew` nothing was noted before. */
export type ShownNow = { readonly id: string; readonly photoIds: readonly string[]; readonly isNew: boolean };

/** Notes which photos entries of a kind show, so that what shows a photo is found without reading every entry. */
export async function noteShownPhotos(
	db: Kysely<Tables> | Transaction<Tables>,
	kind: ShowingKind,
	entries: readonly ShownNow[],
): Promise<void> {
	const known = entries.filter(({ isNew }) => !isNew).map(({ id }) => id);
	if (known.length > 0)
		await db.deleteFrom('shown_photos').where('kind', '=', kind).where('entry_id', 'in', known).execute();
	const rows = entries.flatMap(({ id, photoIds }) => photoIds.map((photo_id) => ({ photo_id, kind, entry_id: id })));
	for (let at = 0; at < rows.length; at += ROWS_AT_ONCE)
		await db
			.insertInto('shown_photos')
			.values(rows.slice(at, at + ROWS_AT_ONCE))
			.execute();
}
