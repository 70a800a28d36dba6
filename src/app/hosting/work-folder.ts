import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { INCOMING_FOLDER } from '../../store/incoming-file.ts';

/** Longer than any file is on its way: a request ends after an hour. */
const FORGOTTEN_AFTER_MS = 24 * 3600 * 1000;

/** Takes away what is older than a day in a folder, however deep it is. */
async function clearOld(folder: string, now: Date, keep: ReadonlySet<string> = new Set()): Promise<void> {
	const names = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
		if (error.code === 'ENOENT') return [];
		throw error;
	});
	for (const name of names) {
		if (keep.has(name)) continue;
		const path = join(folder, name);
		const { mtimeMs } = await stat(path).catch((error: NodeJS.ErrnoException) => {
			// Another process of this machine was done with it meanwhile.
			if (error.code === 'ENOENT') return { mtimeMs: Number.POSITIVE_INFINITY };
			throw error;
		});
		if (now.getTime() - mtimeMs > FORGOTTEN_AFTER_MS) await rm(path, { recursive: true, force: true });
	}
}

/**
 * Takes away what processes that were killed left of files on their way: uploads, archives half unpacked or half written, of up to 64 GB each. Other processes
 * of this machine may share the folder, so that what is younger than a day stays.
 */
export async function clearWorkFolder(workFolder: string, now: Date): Promise<void> {
	await clearOld(workFolder, now, new Set([INCOMING_FOLDER]));
	await clearOld(join(workFolder, INCOMING_FOLDER), now);
}
