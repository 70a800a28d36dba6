import { open } from 'node:fs/promises';
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
	// Opened by now, so that a stream which is given up at once has nothing left to fail at.
	const file = await orNull(open(path));
	if (file === null) return null;
	try {
		const { size } = await file.stat();
		return { sizeBytes: size, stream: file.createReadStream() };
	} catch (error) {
		await file.close();
		throw error;
	}
}
