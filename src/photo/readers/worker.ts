import { speak, type Voice } from '../../language/speak.ts';
import { type ReadOptions, type ReadResult, readPhoto } from '../read-photo.ts';

/** One task of the pool: a photo, what is wanted of it, and the language that its sentences are told in. */
export type ReadTask = {
	readonly source: string | Uint8Array;
	readonly options: ReadOptions;
	readonly language: Voice;
};

/**
 * Pictures lie outside the heap whose size makes the collector run, so it is called: after each photo it looks through what is new, where pictures lie.
 * Through everything it goes by itself. Called for that, it would also drop compiled code that next photos need: measured, 170 ms of processor time.
 */
const collectNew = (): void => globalThis.gc?.({ type: 'minor' });

/** Runs in a worker thread, one task at a time, and speaks as whoever gave the photo. */
export default async (task: ReadTask): Promise<ReadResult> => {
	speak(task.language);
	const result = await readPhoto(task.source, task.options);
	collectNew();
	return result;
};
