import { randomBytes } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { createPrivateFile, makePrivateFolder } from './private-files.ts';

/** Ending of a file that is being written; what start-up finds of them is half of something that was never acknowledged. */
export const PART_ENDING = '.part';

/** Waits until the folder's own list of files is on disk. */
export async function syncFolder(path: string): Promise<void> {
	// Windows has no handle on a folder; there the rename itself is durable enough.
	if (process.platform === 'win32') return;
	const folder = await open(path, 'r');
	try {
		await folder.sync();
	} finally {
		await folder.close();
	}
}

/** Makes a folder and waits until each new one is known on disk to the folder above it. */
async function makeFolderDurably(path: string): Promise<void> {
	const firstMade = await makePrivateFolder(path);
	if (firstMade === undefined) return;
	for (let made = path; made.length >= firstMade.length; made = dirname(made)) await syncFolder(dirname(made));
}

/** Moves a file that is synced already to where nothing or its like lies, so that after a crash it is there or not; both on one disk. */
export async function moveDurably(from: string, to: string): Promise<void> {
	await makeFolderDurably(dirname(to));
	await rename(from, to);
	await syncFolder(dirname(to));
}

/** Writes a file so that after a crash it is there whole or not at all: temporary file, sync, rename, sync of the folder. */
export async function writeDurably(path: string, bytes: Uint8Array): Promise<void> {
	const folder = dirname(path);
	await makeFolderDurably(folder);
	const temporary = join(folder, `.${randomBytes(8).toString('hex')}${PART_ENDING}`);
	try {
		const file = await createPrivateFile(temporary);
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
