import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { OpenedFile } from './photo-files.ts';

/** `null` where the file is missing; every other failure stays one. */
export async function orNull<T>(answer: Promise<T>): Promise<T | null> {
	try {
		return await answer;
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
		throw error;
	}
}

/** A file of this machine to be read as it is taken; null where there is none. */
export async function openFile(path: string): Promise<OpenedFile | null> {
	const found = await orNull(stat(path));
	return found && { sizeBytes: found.size, stream: createReadStream(path) };
}
