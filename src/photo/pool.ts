import './no-telemetry.ts';
import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import { MAX_READ_SECONDS } from './limits.ts';
import { readFailure } from './read-failure.ts';
import type { ReadOptions, ReadResult } from './read-photo.ts';
import type { ReadTask } from './worker.ts';

export type { ReadOptions, ReadResult } from './read-photo.ts';

/** Where a photo comes from: a path, or its bytes. */
export type ReadSource = string | Uint8Array;

/** Reads photos in worker threads: a bad one can take its worker down, never the program. */
export type ReaderPool = {
	read(source: ReadSource, options: ReadOptions): Promise<ReadResult>;
	close(): Promise<void>;
};

/** Threads beyond this only cost memory: each holds a network and a photo of its own. */
const MOST_THREADS = 4;

/** `threads` defaults to one a core, at most 4; a photo that takes longer than `timeoutMs` fails and its worker is replaced. */
export function createReaderPool(settings: { readonly threads?: number; readonly timeoutMs?: number }): ReaderPool {
	const { threads = Math.min(MOST_THREADS, availableParallelism()), timeoutMs = MAX_READ_SECONDS * 1000 } = settings;
	const pool = new Piscina<ReadTask, ReadResult>({
		filename: new URL('./worker.ts', import.meta.url).href,
		execArgv: ['--import', 'tsx'],
		minThreads: 0,
		maxThreads: threads,
		idleTimeout: 30_000,
		concurrentTasksPerWorker: 1,
	});
	let running = 0;
	const waiting: (() => void)[] = [];

	/** Its turn comes when a thread is free, so that the time limit measures the reading and not the queue. */
	async function turn(): Promise<void> {
		if (running >= threads) await new Promise<void>((resolve) => waiting.push(resolve));
		else running++;
	}
	function next(): void {
		const following = waiting.shift();
		if (following) following();
		else running--;
	}

	return {
		async read(source, options) {
			await turn();
			const start = performance.now();
			const abort = new AbortController();
			const timer = setTimeout(() => abort.abort(), timeoutMs);
			try {
				return await pool.run({ source, options }, { signal: abort.signal });
			} catch (error) {
				const ms = Math.round(performance.now() - start);
				if (abort.signal.aborted) {
					return {
						...readFailure(
							'too-slow',
							`Expected to read this photo within ${timeoutMs / 1000} s; it took longer and was stopped.`,
						),
						ms,
					};
				}
				const cause = error instanceof Error ? error.message.slice(0, 120) : 'unknown';
				return {
					...readFailure(
						'crashed',
						`Expected to read this photo; the reader broke down on it (${cause}). The file is kept.`,
					),
					ms,
				};
			} finally {
				clearTimeout(timer);
				next();
			}
		},
		close: () => pool.destroy(),
	};
}
