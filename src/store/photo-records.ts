import type { Kysely, Selectable } from 'kysely';
import { type PhotoFiles, photoIdOf } from './photo-files.ts';
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

/** SQLite takes at most this many values in one statement's list without being told otherwise. */
const IDS_A_QUERY = 500;

/** Photos: rows in the database, files beside it. A file is always on disk before the row that names it. */
export function photoRecords(db: Kysely<Tables>, files: PhotoFiles): Store['photos'] {
	async function get(id: string): Promise<PhotoRecord | null> {
		const row = await db.selectFrom('photos').selectAll().where('id', '=', id).executeTakeFirst();
		return row ? recordOf(row) : null;
	}
	async function existing(id: string): Promise<PhotoRecord> {
		const photo = await get(id);
		if (!photo) throw new TypeError(`expected the id of a stored photo, received ${id}`);
		return photo;
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
		async add(bytes, { originalName, mediaType, addedAt }) {
			const id = photoIdOf(bytes);
			await files.writeOriginal(id, bytes);
			await db
				.insertInto('photos')
				.values({
					id,
					original_name: originalName,
					media_type: mediaType,
					size_bytes: bytes.length,
					added_at: addedAt,
					status: 'waiting',
					failure: null,
					correction: '{}',
					version: 1,
					reading: null,
				})
				.onConflict((conflict) => conflict.column('id').doNothing())
				.execute();
			return existing(id);
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
			const { version } = await existing(id);
			if (mask) await files.writeDerived(id, 'mask', mask);
			await db
				.updateTable('photos')
				.set({ correction: JSON.stringify(correction), version: version + 1, status: 'waiting', failure: null })
				.where('id', '=', id)
				.execute();
			if (!mask) await files.removeDerived(id, 'mask');
			return existing(id);
		},
		original: (id) => files.original(id),
		originalPath: (id) => files.originalPath(id),
		derived: (id, name) => files.derived(id, name),
	};
}
