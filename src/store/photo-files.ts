import { createHash, randomBytes } from 'node:crypto';
import { constants } from 'node:fs';
import { access, mkdir, open, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { DerivedName } from './store.ts';

/** Originals and derived pictures of photos, by the SHA-256 of the original. */
export type PhotoFiles = {
	writeOriginal(id: string, bytes: Uint8Array): Promise<void>;
	original(id: string): Promise<Uint8Array>;
	/** Absolute path for a worker on this machine, or null where the files are elsewhere. */
	originalPath(id: string): Promise<string | null>;
	writeDerived(id: string, name: DerivedName, bytes: Uint8Array): Promise<void>;
	/** null where there is none. */
	derived(id: string, name: DerivedName): Promise<Uint8Array | null>;
	removeDerived(id: string, name: DerivedName): Promise<void>;
	has(id: string): Promise<boolean>;
};

/** The name a photo's bytes give it. */
export const photoIdOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

const isMissing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT';

async function syncFolder(path: string): Promise<void> {
	// Windows has no handle on a folder; there the rename itself is durable enough.
	if (process.platform === 'win32') return;
	const folder = await open(path, 'r');
	try {
		await folder.sync();
	} finally {
		await folder.close();
	}
}

/** Writes a file so that after a crash it is there whole or not at all: temporary file, sync, rename, sync of the folder. */
export async function writeDurably(path: string, bytes: Uint8Array): Promise<void> {
	const folder = dirname(path);
	await mkdir(folder, { recursive: true });
	const temporary = join(folder, `.${randomBytes(8).toString('hex')}.part`);
	try {
		const file = await open(temporary, 'wx');
		try {
			await file.writeFile(bytes);
			await file.sync();
		} finally {
			await file.close();
		}
		await rename(temporary, path);
	} catch (error) {
		await rm(temporary, { force: true });
		throw error;
	}
	await syncFolder(folder);
}

const ID = /^[0-9a-f]{64}$/;
const ENDINGS: Readonly<Record<DerivedName, string>> = {
	thumb: 'webp',
	display: 'webp',
	cutout: 'webp',
	labels: 'png',
	mask: 'png',
};

/** Photo files in a folder: `photos/ab/abcd...` for originals, `derived/ab/abcd....thumb.webp` beside. */
export function directoryPhotoFiles(root: string): PhotoFiles {
	const checked = (id: string) => {
		if (!ID.test(id)) throw new TypeError(`expected a SHA-256 in hex as a photo's id, received ${id}`);
		return id;
	};
	const originalAt = (id: string) => join(root, 'photos', checked(id).slice(0, 2), id);
	const derivedAt = (id: string, name: DerivedName) =>
		join(root, 'derived', checked(id).slice(0, 2), `${id}.${name}.${ENDINGS[name]}`);
	const exists = (path: string) =>
		access(path, constants.R_OK).then(
			() => true,
			(error: unknown) => {
				if (isMissing(error)) return false;
				throw error;
			},
		);
	return {
		writeOriginal: async (id, bytes) => {
			if (!(await exists(originalAt(id)))) await writeDurably(originalAt(id), bytes);
		},
		original: (id) => readFile(originalAt(id)),
		originalPath: async (id) => originalAt(id),
		writeDerived: (id, name, bytes) => writeDurably(derivedAt(id, name), bytes),
		derived: async (id, name) =>
			readFile(derivedAt(id, name)).catch((error: unknown) => {
				if (isMissing(error)) return null;
				throw error;
			}),
		removeDerived: (id, name) => rm(derivedAt(id, name), { force: true }),
		has: (id) => exists(originalAt(id)),
	};
}
