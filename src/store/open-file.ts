import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { Readable } from 'node:stream';

/** A file that is read as it is taken, piece by piece. Whoever stops in the middle destroys the stream. */
export type OpenedFile = { readonly sizeBytes: number; readonly stream: Readable };

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
