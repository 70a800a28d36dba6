import '../networks/no-telemetry.ts';
import { Piscina } from 'piscina';
import { programBeside } from '../../process/program-beside.ts';
import type { ReadResult } from '../read-photo.ts';
import type { ReadTask } from './worker.ts';

/** What the pool asks of the reader process. */
export type ReadRequest = ReadTask & { readonly id: number; readonly timeoutMs: number };

/** What became of the worker that should have read a photo: stopped for its time, broken down on it, or gone with the whole process. */
export type ReadStop = { readonly stopped: 'too-slow' | 'crashed' | 'lost'; readonly cause: string };

/** What it answers. */
export type ReadAnswer = { readonly id: number } & ({ readonly result: ReadResult } | ReadStop);

const pool = new Piscina<ReadTask, ReadResult>({
	filename: programBeside(import.meta.url, 'worker').path,
	minThreads: 0,
	maxThreads: Number(process.argv[2]),
	idleTimeout: 30_000,
	concurrentTasksPerWorker: 1,
});

async function answer({ id, timeoutMs, ...task }: ReadRequest): Promise<ReadAnswer> {
	const limit = AbortSignal.timeout(timeoutMs);
	try {
		return { id, result: await pool.run(task, { signal: limit }) };
	} catch (error) {
		if (limit.aborted) return { id, stopped: 'too-slow', cause: 'time limit' };
		return { id, stopped: 'crashed', cause: error instanceof Error ? error.message.slice(0, 120) : 'unknown' };
	}
}

process.on('message', async (request: ReadRequest) => {
	const done = await answer(request);
	if (process.connected) process.send?.(done);
});
// The program that asks decides when to stop: an interrupt typed into the terminal reaches both, and must not fail a photo being read.
process.on('SIGINT', () => {});
process.on('disconnect', () => process.exit());
