import { type ReadOptions, type ReadResult, readPhoto } from './read-photo.ts';

/** One task of the pool: a photo and what is wanted of it. */
export type ReadTask = { readonly source: string | Uint8Array; readonly options: ReadOptions };

/** Runs in a worker thread. */
export default async (task: ReadTask): Promise<ReadResult> => {
	const result = await readPhoto(task.source, task.options);
	// Pictures lie outside the heap that makes the collector run: without this, some 60 MB a thread wait for it.
	globalThis.gc?.();
	return result;
};
