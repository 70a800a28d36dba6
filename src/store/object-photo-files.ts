import { rm } from 'node:fs/promises';
import { basename } from 'node:path';
import { say } from '../language/speak.ts';
import type { Content } from './object-requests.ts';
import type { ObjectStore } from './object-store.ts';
import { derivedKey, originalKey, outlineOf, type PhotoFiles } from './photo-files.ts';

/** Photo files in an S3-compatible object store, below `prefix` (one a home). */
export function objectPhotoFiles(objects: ObjectStore, prefix: string): PhotoFiles {
	const below = (key: string) => `${encodeURIComponent(prefix)}/${key}`;

	/** An object of another size is a damaged one, and the bytes that come now mend it. */
	async function write(id: string, sizeBytes: number, content: Content): Promise<void> {
		const key = below(originalKey(id));
		if ((await objects.size(key)) !== sizeBytes) await objects.put(key, content);
	}

	return {
		writeOriginal: (id, bytes) => write(id, bytes.length, bytes),
		async takeOriginal(id, file) {
			await write(id, file.sizeBytes, file);
			await rm(file.path, { force: true });
		},
		async original(id) {
			const bytes = await objects.get(below(originalKey(id)));
			if (!bytes) throw new Error(say('home.originalMissing', { id }));
			return bytes;
		},
		openOriginal: (id) => objects.open(below(originalKey(id))),
		originalPath: async () => null,
		writeDerived: (id, name, bytes) => objects.put(below(derivedKey(id, name)), bytes),
		derived: (id, name) => objects.get(below(derivedKey(id, name))),
		removeDerived: (id, name) => objects.remove(below(derivedKey(id, name))),
		async outlines() {
			const kept = await objects.list(below('derived/'));
			return kept.flatMap(({ key, writtenAt }) => {
				const outline = outlineOf(basename(key));
				return outline ? [{ ...outline, writtenAt }] : [];
			});
		},
		async removeAll() {
			for (const { key } of await objects.list(below(''))) await objects.remove(key);
		},
	};
}
