import { readFile, rm, rmdir, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { moveDurably, writeDurably } from './durable-write.ts';
import { filesBelow } from './files-below.ts';
import { openFile, orNull } from './open-file.ts';
import { derivedKey, originalKey, outlineOf, type PhotoFiles } from './photo-files.ts';

/** Photo files in a folder: `photos/ab/abcd...` for originals, `derived/ab/abcd....thumb.webp` beside. */
export function directoryPhotoFiles(root: string): PhotoFiles {
	const originalAt = (id: string) => join(root, originalKey(id));
	/** A file of another size is a damaged one, and the bytes that come now mend it. */
	const isThere = async (id: string, sizeBytes: number) => (await orNull(stat(originalAt(id))))?.size === sizeBytes;
	return {
		async writeOriginal(id, bytes) {
			if (!(await isThere(id, bytes.length))) await writeDurably(originalAt(id), bytes);
		},
		async takeOriginal(id, { path, sizeBytes }) {
			if (await isThere(id, sizeBytes)) await rm(path, { force: true });
			else await moveDurably(path, originalAt(id));
		},
		original: async (id) => readFile(originalAt(id)),
		openOriginal: (id) => openFile(originalAt(id)),
		originalPath: async (id) => originalAt(id),
		writeDerived: (id, name, bytes) => writeDurably(join(root, derivedKey(id, name)), bytes),
		derived: async (id, name) => orNull(readFile(join(root, derivedKey(id, name)))),
		removeDerived: async (id, name) => rm(join(root, derivedKey(id, name)), { force: true }),
		async outlines() {
			const found = [];
			for (const path of await filesBelow(join(root, 'derived'))) {
				const outline = outlineOf(basename(path));
				const written = outline && (await orNull(stat(path)));
				if (outline && written) found.push({ ...outline, writtenAt: written.mtime });
			}
			return found;
		},
		async removeAll() {
			for (const folder of ['photos', 'derived']) await rm(join(root, folder), { recursive: true, force: true });
			await rmdir(root).catch((error: NodeJS.ErrnoException) => {
				// Never made, or it holds more than photos.
				if (error.code !== 'ENOENT' && error.code !== 'ENOTEMPTY') throw error;
			});
		},
	};
}
