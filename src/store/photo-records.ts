import { createHash } from 'node:crypto';
import type { Kysely } from 'kysely';
import { type PhotoFiles, type PictureName, photoIdOf } from './photo-files.ts';
import { photoReads, photosNear } from './photo-reads.ts';
import type { Tables } from './schema.ts';
import type { DerivedName, PhotoStore } from './store.ts';

/** Photos: rows in the database, files beside it. A file is always on disk before the row that names it. */
export function photoRecords(db: Kysely<Tables>, files: PhotoFiles): PhotoStore {
	const reads = photoReads(db);
	const keepDerived: PhotoStore['keepDerived'] = async (id, derived) => {
		for (const [name, picture] of Object.entries(derived)) await files.writeDerived(id, name as DerivedName, picture);
	};

	return {
		...reads,
		near: (photo) => photosNear(db, photo),
		async keepOriginal(bytes) {
			const id = photoIdOf(bytes);
			await files.writeOriginal(id, bytes);
			return id;
		},
		async keepFile(file) {
			await files.takeOriginal(file.sha256, file);
			return file.sha256;
		},
		async keepMask(id, mask) {
			// Named by what is in it: two that are drawn at once never share a file, and the same one is written once.
			const name: PictureName = `mask-${createHash('sha256').update(mask).digest('hex').slice(0, 16)}`;
			await files.writeDerived(id, name, mask);
			return name;
		},
		keepDerived,
		async saveReading(id, reading, derived) {
			await keepDerived(id, derived);
			await db
				.updateTable('photos')
				.set({ reading: JSON.stringify(reading), taken_at: reading.takenAt ?? null, status: 'read', failure: null })
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
		original: (id) => files.original(id),
		openOriginal: (id) => files.openOriginal(id),
		originalPath: (id) => files.originalPath(id),
		async derived(id, name) {
			if (name !== 'mask') return files.derived(id, name);
			const mask = await reads.maskOf(id);
			return mask ? files.derived(id, mask as PictureName) : null;
		},
	};
}
