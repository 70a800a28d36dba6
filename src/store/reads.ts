import type { Palette } from '../wardrobe/words/palette-colour.ts';
import type { LineUpChoice } from '../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../wardrobe/words/wear.ts';
import { storedOf } from './entry-rows.ts';
import type { Connection } from './entry-state.ts';
import { photoReads, photosNear } from './photo-reads.ts';
import type { ShowingKind } from './shown-photos.ts';
import type { HomeReads, Kept, Reads } from './store.ts';

/** Kinds that carry their version: those of which a page may hold an old state. */
const UNVERSIONED: ReadonlySet<string> = new Set(['wear', 'pair-word']);

const isObject = (body: unknown): body is object => body !== null && typeof body === 'object' && !Array.isArray(body);

function entryOf<T>(kind: string, row: { readonly body: string; readonly version: number }): T {
	const body = JSON.parse(row.body) as T;
	return UNVERSIONED.has(kind) || !isObject(body) ? body : { ...body, version: row.version };
}

/** Ids from `from` (it too) up to `before` (not it), by code point. */
type IdRange = { readonly from?: string; readonly before?: string };

async function list<T>(db: Connection, kind: string, { from, before }: IdRange = {}): Promise<T[]> {
	let query = db
		.selectFrom('entries')
		.select(['body', 'version'])
		.where('kind', '=', kind)
		.where('binned_at', 'is', null);
	if (from !== undefined) query = query.where('id', '>=', from);
	if (before !== undefined) query = query.where('id', '<', before);
	const rows = await query.orderBy('id').execute();
	return rows.map((row) => entryOf<T>(kind, row));
}

async function get<T>(db: Connection, kind: string, id: string): Promise<T | null> {
	const { state, version } = await storedOf(db, { kind, id });
	return state && state.binnedAt === null ? entryOf<T>(kind, { body: state.body, version }) : null;
}

/** Reads of the entries of one kind. */
export function readsOfKind<T>(db: Connection, kind: string): Reads<T> {
	return {
		list: () => list<Kept<T>>(db, kind),
		async count() {
			const { entries } = await db
				.selectFrom('entries')
				.select(({ fn }) => fn.countAll().as('entries'))
				.where('kind', '=', kind)
				.where('binned_at', 'is', null)
				.executeTakeFirstOrThrow();
			return Number(entries);
		},
		get: (id) => get<Kept<T>>(db, kind, id),
	};
}

async function showing(db: Connection, kind: ShowingKind, photoId: string): Promise<string[]> {
	const rows = await db
		.selectFrom('shown_photos')
		.innerJoin('entries', (join) =>
			join.onRef('entries.kind', '=', 'shown_photos.kind').onRef('entries.id', '=', 'shown_photos.entry_id'),
		)
		.select('entries.id')
		.where('shown_photos.photo_id', '=', photoId)
		.where('shown_photos.kind', '=', kind)
		.where('entries.binned_at', 'is', null)
		.orderBy('entries.id')
		.execute();
	return rows.map(({ id }) => id);
}

/** Everything that can be asked of a home, over a connection or within a transaction. */
export function readsOf(db: Connection): HomeReads {
	return {
		seasons: readsOfKind(db, 'season'),
		garments: readsOfKind(db, 'garment'),
		inspirations: readsOfKind(db, 'inspiration'),
		wishes: readsOfKind(db, 'wish'),
		candidates: readsOfKind(db, 'candidate'),
		makers: readsOfKind(db, 'maker'),
		photos: { ...photoReads(db), near: (photo) => photosNear(db, photo) },
		showing: (kind, photoId) => showing(db, kind, photoId),
		palette: (seasonId) => get<Palette>(db, 'palette', seasonId),
		lineUp: (seasonId) => get<LineUpChoice>(db, 'line-up', seasonId),
		// Ids begin with the day; `!` is the character after the blank that ends it.
		wears: ({ from, to } = {}) =>
			list<Wear>(db, 'wear', { ...(from ? { from } : {}), ...(to ? { before: `${to}!` } : {}) }),
		pairWords: () => list<PairWord>(db, 'pair-word'),
		async changesSince(kind, id, version) {
			const { state, version: newest, fieldVersions } = await storedOf(db, { kind, id });
			if (state === null || newest === version) return [];
			if ((fieldVersions['*'] ?? 0) > version || version > newest) return Object.keys(JSON.parse(state.body) as object);
			return Object.keys(fieldVersions).filter((field) => fieldVersions[field]! > version);
		},
	};
}
