import { ONE_GO_MS } from '../wardrobe/words/one-go.ts';
import type { Connection } from './entry-state.ts';
import { photoRecordOf } from './photo-rows.ts';
import type { HomeReads, PhotoRecord } from './store.ts';

/** SQLite takes at most this many values in one statement's list without being told otherwise. */
const IDS_A_QUERY = 500;

/** Photos by id, all of them, or those in one state. */
export function photoReads(db: Connection): Omit<HomeReads['photos'], 'near'> {
	return {
		async get(id) {
			const row = await db.selectFrom('photos').selectAll().where('id', '=', id).executeTakeFirst();
			return row ? photoRecordOf(row) : null;
		},
		async list(ids) {
			if (!ids)
				return (await db.selectFrom('photos').selectAll().orderBy('added_at').orderBy('id').execute()).map(
					photoRecordOf,
				);
			const found: PhotoRecord[] = [];
			for (let at = 0; at < ids.length; at += IDS_A_QUERY) {
				const part = ids.slice(at, at + IDS_A_QUERY);
				found.push(...(await db.selectFrom('photos').selectAll().where('id', 'in', part).execute()).map(photoRecordOf));
			}
			return found;
		},
		async maskOf(id) {
			const row = await db.selectFrom('photos').select('mask').where('id', '=', id).executeTakeFirst();
			return row?.mask ?? null;
		},
		async counts() {
			const counts = { waiting: 0, read: 0, failed: 0 };
			const rows = await db
				.selectFrom('photos')
				.select(({ fn }) => ['status', fn.countAll().as('photos')])
				.groupBy('status')
				.execute();
			for (const { status, photos } of rows) counts[status] = Number(photos);
			return counts;
		},
		async waiting() {
			const rows = await db
				.selectFrom('photos')
				.select('id')
				.where('status', '=', 'waiting')
				.orderBy('added_at')
				.orderBy('id')
				.execute();
			return rows.map(({ id }) => id);
		},
	};
}

const takenAround = (takenAt: string): { from: string; to: string } | null => {
	const at = Date.parse(`${takenAt}Z`);
	if (Number.isNaN(at)) return null;
	const written = (ms: number) => new Date(ms).toISOString().slice(0, 19);
	return { from: written(at - ONE_GO_MS), to: written(at + ONE_GO_MS) };
};

/** Most photos that one look for neighbours reads: a go of a thousand photos is none. */
const MOST_NEAR = 400;

/**
 * Photos that may share this one's light: those of its named group, or those taken within ten minutes of it and, link by link, of each
 * other. Reads only these, whatever the number of photos in the home; the photo itself is among them.
 */
export async function photosNear(
	db: Connection,
	{ takenAt, lightGroup }: { readonly takenAt: string | null; readonly lightGroup: string | null },
): Promise<PhotoRecord[]> {
	const read = () => db.selectFrom('photos').selectAll().where('reading', 'is not', null);
	if (lightGroup !== null) {
		const rows = await read().where('light_group', '=', lightGroup).orderBy('id').limit(MOST_NEAR).execute();
		return rows.map(photoRecordOf);
	}
	const first = takenAt === null ? null : takenAround(takenAt);
	if (!first) return [];
	const found = new Map<string, PhotoRecord>();
	let span = first;
	for (;;) {
		const rows = await read()
			.where('light_group', 'is', null)
			.where('taken_at', '>=', span.from)
			.where('taken_at', '<=', span.to)
			.orderBy('taken_at')
			.limit(MOST_NEAR)
			.execute();
		for (const row of rows) found.set(row.id, photoRecordOf(row));
		const [earliest, latest] = [rows[0]?.taken_at, rows.at(-1)?.taken_at];
		const wider = {
			from: earliest ? takenAround(earliest)!.from : span.from,
			to: latest ? takenAround(latest)!.to : span.to,
		};
		if ((wider.from >= span.from && wider.to <= span.to) || found.size >= MOST_NEAR) return [...found.values()];
		const ends = [span.from, span.to, wider.from, wider.to].sort();
		span = { from: ends[0]!, to: ends[3]! };
	}
}
