import { type ReadOptions, type ReadResult, readPhoto } from './read-photo.ts';

/** One task of the pool: a photo and what is wanted of it. */
export type ReadTask = { readonly source: string | Uint8Array; readonly options: ReadOptions };

/**
 * Pictures lie outside the heap whose size makes the collector run, so it is called. After each photo it looks through what is new, where pictures
 * lie; looking through all as often costs a fifth of the processor time, never doing so leaves what grew old meanwhile.
 */
const PHOTOS_PER_FULL_COLLECTION = 10;
let photosRead = 0;
function collect(): void {
	const isFull = ++photosRead % PHOTOS_PER_FULL_COLLECTION === 0;
	globalThis.gc?.({ type: isFull ? 'major' : 'minor' });
}

/** Runs in a worker thread. */
export default async (task: ReadTask): Promise<ReadResult> => {
	const result = await readPhoto(task.source, task.options);
	collect();
	return result;
};
