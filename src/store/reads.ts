import type { Palette } from '../wardrobe/words/palette-colour.ts';
import type { LineUpChoice } from '../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../wardrobe/words/wear.ts';
import { photoReads, photosNear } from './photo-reads.ts';
import type { ShowingKind } from './shown-photos.ts';
import type { HomeReads, Kept, Reads } from './store.ts';
import { storedOf } from './thing-rows.ts';
import type { Connection } from './thing-state.ts';

/** Kinds that carry their version: those of which a page may hold an old state. */
const UNVERSIONED: ReadonlySet<string> = new Set(['wear', 'pair-word']);

const isObject = (body: unknown): body is object => body !== null && typeof body === 'object' && !Array.isArray(body);

function thingOf<T>(kind: string, row: { readonly body: string; readonly version: number }): T {
	const body = JSON.parse(row.body) as T;
	return UNVERSIONED.has(kind) || !isObject(body) ? body : { ...body, version: row.version };
}

/** Ids from `from` (it too) up to `before` (not it), by code point. */
type IdRange = { readonly from?: string; readonly before?: string };

async function list<T>(db: Connection, kind: string, { from, before }: IdRange = {}): Promise<T[]> {
	let query = db
		.selectFrom('things')
		.select(['body', 'version'])
		.where('kind', '=', kind)
		.where('binned_at', 'is', null);
	if (from !== undefined) query = query.where('id', '>=', from);
	if (before !== undefined) query = query.where('id', '<', before);
	const rows = await query.orderBy('id').execute();
	return rows.map((row) => thingOf<T>(kind, row));
}

async function get<T>(db: Connection, kind: string, id: string): Promise<T | null> {
	const { state, version } = await storedOf(db, { kind, id });
	return state && state.binnedAt === null ? thingOf<T>(kind, { body: state.body, version }) : null;
}

/** Reads of the things of one kind. */
export function readsOfKind<T>(db: Connection, kind: string): Reads<T> {
	return {
		list: () => list<Kept<T>>(db, kind),
		async count() {
			const { things } = await db
				.selectFrom('things')
				.select(({ fn }) => fn.countAll().as('things'))
				.where('kind', '=', kind)
				.where('binned_at', 'is', null)
				.executeTakeFirstOrThrow();
			return Number(things);
		},
		get: (id) => get<Kept<T>>(db, kind, id),
	};
}

async function showing(db: Connection, kind: ShowingKind, photoId: string): Promise<string[]> {
	const rows = await db
		.selectFrom('shown_photos')
		.innerJoin('things', (join) =>
			join.onRef('things.kind', '=', 'shown_photos.kind').onRef('things.id', '=', 'shown_photos.thing_id'),
		)
		.select('things.id')
		.where('shown_photos.photo_id', '=', photoId)
		.where('shown_photos.kind', '=', kind)
		.where('things.binned_at', 'is', null)
		.orderBy('things.id')
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
