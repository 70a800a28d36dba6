import type { Kysely, Selectable, Transaction } from 'kysely';
import type { PhotoRow, Tables } from './schema.ts';
import type { NewPhoto, PhotoRecord } from './store.ts';

/** What is kept of a photo, from its row. */
export const photoRecordOf = (row: Selectable<PhotoRow>): PhotoRecord => ({
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

/** Adds the row of a photo whose file is on disk already; a photo that is known stays as it is, but for a reading that it lacks. */
export async function insertPhoto(db: Kysely<Tables> | Transaction<Tables>, photo: NewPhoto): Promise<void> {
	const { reading } = photo;
	const read = reading && {
		status: 'read' as const,
		failure: null,
		reading: JSON.stringify(reading),
		taken_at: reading.takenAt ?? null,
	};
	await db
		.insertInto('photos')
		.values({
			id: photo.id,
			// No database keeps a NUL in text alike; it is never part of a name that a person gave.
			original_name: photo.originalName.replaceAll('\0', ''),
			media_type: photo.mediaType,
			size_bytes: photo.sizeBytes,
			added_at: photo.addedAt,
			status: 'waiting',
			failure: null,
			correction: '{}',
			version: 1,
			reading: null,
			mask: null,
			taken_at: null,
			light_group: null,
			...read,
		})
		.onConflict((conflict) => {
			const sameId = conflict.column('id');
			return read ? sameId.doUpdateSet(read).where('photos.reading', 'is', null) : sameId.doNothing();
		})
		.execute();
}
