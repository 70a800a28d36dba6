import { type ReadOptions, type ReadResult, readPhoto } from './read-photo.ts';

/** One task of the pool: a photo and what is wanted of it. */
export type ReadTask = { readonly source: string | Uint8Array; readonly options: ReadOptions };

/** Pictures lie outside the heap whose size makes the collector run, so it is called: every photo would cost too much time, none leaves 60 MB a thread lying. */
const PHOTOS_PER_COLLECTION = 2;
let photosRead = 0;

/** Runs in a worker thread. */
export default async (task: ReadTask): Promise<ReadResult> => {
	const result = await readPhoto(task.source, task.options);
	if (++photosRead % PHOTOS_PER_COLLECTION === 0) globalThis.gc?.();
	return result;
};
