import type { Kysely, Transaction } from 'kysely';
import type { State } from './entry-state.ts';
import type { PictureName } from './photo-files.ts';
import type { Tables } from './schema.ts';

/** What makes a home; devices that were paired with its computer stay behind. */
const COPIED = ['entries', 'photos', 'decisions', 'set_aside', 'revisions', 'answers', 'shown_photos'] as const;

/** Rows put in by one statement: a photo has 13 columns, and SQLite takes 32,766 values. */
const ROWS_A_STATEMENT = 500;

type Rows = Record<string, unknown>[];

/** Decisions are numbered anew in their order: where many homes are kept they are counted together. */
const NUMBERED_ANEW = 'decisions';

async function rowsOf(from: Transaction<Tables>, table: (typeof COPIED)[number]): Promise<Rows> {
	// Tables of many homes say of each row whose it is.
	if (table !== NUMBERED_ANEW)
		return ((await from.selectFrom(table).selectAll().execute()) as Rows).map(({ home: _home, ...row }) => row);
	return from.selectFrom(table).select(['at', 'sentence', 'changes', 'undone']).orderBy('id').execute();
}

/** Copies all rows of a home into tables that are empty but for the row that counts revisions. */
export async function copyRows(from: Transaction<Tables>, to: Transaction<Tables>): Promise<void> {
	await to.deleteFrom('revisions').execute();
	for (const table of COPIED) {
		const rows = await rowsOf(from, table);
		for (let at = 0; at < rows.length; at += ROWS_A_STATEMENT)
			await to
				.insertInto(table)
				.values(rows.slice(at, at + ROWS_A_STATEMENT) as never)
				.execute();
	}
}

/** Masks that undoing may bring back, by photo. */
async function masksIn(db: Kysely<Tables>): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
	const masks = new Map<string, Set<string>>();
	const note = (id: string, mask: unknown) => {
		if (typeof mask === 'string') masks.set(id, (masks.get(id) ?? new Set()).add(mask));
	};
	for (const { id, mask } of await db.selectFrom('photos').select(['id', 'mask']).execute()) note(id, mask);
	for (const { changes } of await db.selectFrom('decisions').select('changes').execute())
		for (const { kind, id, before, after } of JSON.parse(changes) as Change[])
			if (kind === 'correction') for (const state of [before, after]) note(id, state && JSON.parse(state.body).mask);
	return masks;
}
type Change = { readonly kind: string; readonly id: string; readonly before: State; readonly after: State };

const PICTURES = ['thumb', 'display', 'labels', 'cutout'] as const satisfies readonly PictureName[];

/** A photo of a home, and the names of the pictures that may lie beside it. */
export type PhotoOfHome = { readonly id: string; readonly pictures: readonly PictureName[] };

/** All photos that the tables name. */
export async function photosOfHome(db: Kysely<Tables>): Promise<PhotoOfHome[]> {
	const masks = await masksIn(db);
	const rows = await db.selectFrom('photos').select('id').execute();
	return rows.map(({ id }) => ({ id, pictures: [...PICTURES, ...((masks.get(id) ?? []) as Iterable<PictureName>)] }));
}
