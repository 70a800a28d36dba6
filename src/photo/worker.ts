import { type ReadOptions, type ReadResult, readPhoto } from './read-photo.ts';

/** One task of the pool: a photo and what is wanted of it. */
export type ReadTask = { readonly source: string | Uint8Array; readonly options: ReadOptions };

/** Runs in a worker thread. */
export default (task: ReadTask): Promise<ReadResult> => readPhoto(task.source, task.options);
