import type { Kysely, Selectable } from 'kysely';
import { type PhotoFiles, type PictureName, photoIdOf } from './photo-files.ts';
import type { PhotoRow, Tables } from './schema.ts';
import type { DerivedName, PhotoRecord, Store } from './store.ts';

const recordOf = (row: Selectable<PhotoRow>): PhotoRecord => ({
	id: row.id,
	originalName: row.original_name,
	mediaType: row.media_type,
	sizeBytes: row.size_bytes,
	addedAt: row.added_at,
	status: row.status,
	failure: row.failure === null ? null : (JSON.parse(row.failure) as PhotoRecord['failure']),
	correction: JSON.parse(row.correction) as PhotoRecord['correction'],
	version: row.version,
	reading: row.reading === null ? null : (JSON.parse(row.reading) as PhotoRecord['reading']),
});

type About = Parameters<Store['photos']['add']>[1];

/** SQLite takes at most this many values in one statement's list without being told otherwise. */
const IDS_A_QUERY = 500;

/** Photos: rows in the database, files beside it. A file is always on disk before the row that names it. */
export function photoRecords(db: Kysely<Tables>, files: PhotoFiles): Store['photos'] {
	const rowOf = (id: string) => db.selectFrom('photos').selectAll().where('id', '=', id).executeTakeFirst();

	async function get(id: string): Promise<PhotoRecord | null> {
		const row = await rowOf(id);
		return row ? recordOf(row) : null;
	}
	async function existing(id: string): Promise<Selectable<PhotoRow>> {
		const row = await rowOf(id);
		if (!row) throw new TypeError(`expected the id of a stored photo, received ${id}`);
		return row;
	}

	/** Known content keeps its row. */
	async function addRow(
		id: string,
		sizeBytes: number,
		{ originalName, mediaType, addedAt }: About,
	): Promise<PhotoRecord> {
		await db
			.insertInto('photos')
			.values({
				id,
				// No database keeps a NUL in text alike; it is never part of a name that a person gave.
				original_name: originalName.replaceAll('\0', ''),
				media_type: mediaType,
				size_bytes: sizeBytes,
				added_at: addedAt,
				status: 'waiting',
				failure: null,
				correction: '{}',
				version: 1,
				reading: null,
				mask: null,
			})
			.onConflict((conflict) => conflict.column('id').doNothing())
			.execute();
		return recordOf(await existing(id));
	}

	return {
		get,
		async list(ids) {
			if (!ids)
				return (await db.selectFrom('photos').selectAll().orderBy('added_at').orderBy('id').execute()).map(recordOf);
			const found: PhotoRecord[] = [];
			for (let at = 0; at < ids.length; at += IDS_A_QUERY) {
				const part = ids.slice(at, at + IDS_A_QUERY);
				found.push(...(await db.selectFrom('photos').selectAll().where('id', 'in', part).execute()).map(recordOf));
			}
			return found;
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
		async add(bytes, about) {
			const id = photoIdOf(bytes);
			await files.writeOriginal(id, bytes);
			return addRow(id, bytes.length, about);
		},
		async addFile({ path, sha256, sizeBytes }, about) {
			await files.takeOriginal(sha256, path);
			return addRow(sha256, sizeBytes, about);
		},
		async saveReading(id, reading, derived) {
			for (const [name, picture] of Object.entries(derived)) await files.writeDerived(id, name as DerivedName, picture);
			await db
				.updateTable('photos')
				.set({ reading: JSON.stringify(reading), status: 'read', failure: null })
				.where('id', '=', id)
				.execute();
		},
		async saveFailure(id, failure) {
			await db
				.updateTable('photos')
				.set({ status: 'failed', failure: JSON.stringify(failure) })
				.where('id', '=', id)
				.execute();
		},
		async saveCorrection(id, correction, mask) {
			const before = await existing(id);
			const version = before.version + 1;
			const maskName: PictureName | null = mask ? `mask-${version}` : null;
			if (mask && maskName) await files.writeDerived(id, maskName, mask);
			const changed = await db
				.updateTable('photos')
				.set({ correction: JSON.stringify(correction), version, status: 'waiting', failure: null, mask: maskName })
				.where('id', '=', id)
				.where('version', '=', before.version)
				.executeTakeFirst();
			// Somebody else corrected it between our reading and our writing: theirs is kept, ours comes after.
			if (changed.numUpdatedRows === 0n) return this.saveCorrection(id, correction, mask);
			if (before.mask && before.mask !== maskName) await files.removeDerived(id, before.mask as PictureName);
			return recordOf(await existing(id));
		},
		original: (id) => files.original(id),
		originalPath: (id) => files.originalPath(id),
		async derived(id, name) {
			if (name !== 'mask') return files.derived(id, name);
			const row = await rowOf(id);
			return row?.mask ? files.derived(id, row.mask as PictureName) : null;
		},
	};
}
