import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './schema.ts';

/** Kinds of things that show photos. */
export const SHOWING_KINDS = ['garment', 'inspiration', 'candidate'] as const;
export type ShowingKind = (typeof SHOWING_KINDS)[number];

/** One thing may show many photos; three values a row stay below what a statement takes. */
const ROWS_AT_ONCE = 2000;

const isShowing = (kind: string): kind is ShowingKind => SHOWING_KINDS.some((one) => one === kind);

/** Ids of the photos that a thing of these fields shows. */
export function shownPhotoIds({ photoIds, photoId }: Readonly<Record<string, unknown>>): string[] {
	const ids = Array.isArray(photoIds) ? photoIds : [photoId];
	return [...new Set(ids.filter((id): id is string => typeof id === 'string'))];
}

/** Notes which photos things of a kind show, so that what shows a photo is found without reading every thing. */
export async function noteShownPhotos(
	db: Kysely<Tables> | Transaction<Tables>,
	kind: string,
	things: readonly { readonly id: string; readonly fields: Readonly<Record<string, unknown>> }[],
): Promise<void> {
	if (!isShowing(kind) || things.length === 0) return;
	const ids = things.map(({ id }) => id);
	await db.deleteFrom('shown_photos').where('kind', '=', kind).where('thing_id', 'in', ids).execute();
	const rows = things.flatMap(({ id, fields }) =>
		shownPhotoIds(fields).map((photo_id) => ({ photo_id, kind, thing_id: id })),
	);
	for (let at = 0; at < rows.length; at += ROWS_AT_ONCE)
		await db
			.insertInto('shown_photos')
			.values(rows.slice(at, at + ROWS_AT_ONCE))
			.execute();
}
