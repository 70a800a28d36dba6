import '../networks/no-telemetry.ts';
import { availableParallelism } from 'node:os';
import { MAX_READ_SECONDS } from '../file/limits.ts';
import { type ReadFailure, readFailure } from '../file/read-failure.ts';
import type { ReadOptions, ReadResult } from '../read-photo.ts';
import type { ReadAnswer, ReadRequest, ReadStop } from './reader-process.ts';
import { type Readers, startReaders } from './readers.ts';

export type { ReadOptions, ReadResult } from '../read-photo.ts';

/** Where a photo comes from: a path, or its bytes. */
export type ReadSource = string | Uint8Array;

/** Reads photos in the threads of a process of their own: a bad one can take that down, never the program. */
export type ReaderPool = {
	read(source: ReadSource, options: ReadOptions): Promise<ReadResult>;
	/** Ends the process; what it was reading, and all that comes later, fails. */
	close(): Promise<void>;
};

/** Threads beyond this only cost memory: each holds a network and a photo of its own. */
const MOST_THREADS = 4;

/** Photos that are read side by side unless told otherwise: one a core, within reason. */
export const readerThreads = (): number => Math.min(MOST_THREADS, availableParallelism());

function failureOf({ stopped, cause }: ReadStop, timeoutMs: number): ReadFailure {
	if (stopped === 'too-slow') {
		const message = `Expected to read this photo within ${timeoutMs / 1000} s; it took longer and was stopped.`;
		return readFailure('too-slow', message);
	}
	const message = `Expected to read this photo; the reader broke down on it (${cause}). The file is kept.`;
	return readFailure('crashed', message);
}

/** `threads` defaults to one a core, at most 4; a photo that takes longer than `timeoutMs` fails and its worker is replaced. */
export function createReaderPool(settings: { readonly threads?: number; readonly timeoutMs?: number }): ReaderPool {
	const { threads = readerThreads(), timeoutMs = MAX_READ_SECONDS * 1000 } = settings;
	let readers: Readers | null = null;
	let lastId = 0;
	let closed = false;
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

	async function askOnce(request: ReadRequest): Promise<ReadAnswer> {
		if (closed) return { id: request.id, stopped: 'crashed', cause: 'the program is closing' };
		if (!readers?.isAlive()) readers = startReaders(threads);
		return readers.ask(request);
	}

	/** A photo lost with the process gets a second try: another one may have brought it down. */
	async function ask(request: ReadRequest): Promise<ReadAnswer> {
		const answer = await askOnce(request);
		return 'stopped' in answer && answer.stopped === 'lost' ? askOnce(request) : answer;
	}

	return {
		async read(source, options) {
			await turn();
			const start = performance.now();
			const answer = await ask({ id: ++lastId, source, options, timeoutMs });
			next();
			if ('result' in answer) return answer.result;
			return { ...failureOf(answer, timeoutMs), ms: Math.round(performance.now() - start) };
		},
		async close() {
			closed = true;
			await readers?.stop();
		},
	};
}
