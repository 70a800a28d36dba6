import { inLanguage, say, spokenLanguage, type Voice } from '../../language/speak.ts';
import '../networks/no-telemetry.ts';
import { availableParallelism, loadavg } from 'node:os';
import { MAX_READ_SECONDS } from '../file/limits.ts';
import { type ReadFailure, readFailure } from '../file/read-failure.ts';
import type { ReadOptions, ReadResult } from '../read-photo.ts';
import type { ReadAnswer, ReadRequest, ReadStop } from './reader-process.ts';
import { type Readers, startReaders } from './readers.ts';
import { createTurns } from './turns.ts';

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

/** Times that a photo is read beside others before it is suspected itself. */
const TRIES_BESIDE_OTHERS = 2;

const wasLost = (answer: ReadAnswer): boolean => 'stopped' in answer && answer.stopped === 'lost';

/**
 * By how much longer anything takes while the computer is busy with other things: programs that want to run for each core, 1 or more. The
 * system's own average of the last minute; Windows has none.
 */
const busyFactor = (): number => Math.max(1, loadavg()[0]! / availableParallelism());

/** Photos that are read side by side unless told otherwise: one a core, within reason. */
export const readerThreads = (): number => Math.min(MOST_THREADS, availableParallelism());

function failureOf({ stopped, cause }: ReadStop, timeoutMs: number): ReadFailure {
	if (stopped === 'too-slow') {
		const message = say('photoFiles.tooSlow', { seconds: Math.round(timeoutMs / 1000) });
		return readFailure('too-slow', message);
	}
	const message = say('photoFiles.crashed', { cause });
	return readFailure('crashed', message);
}

/**
 * `threads` defaults to one a core, at most 4; a photo that takes longer than `timeoutMs` (a minute of a computer that does nothing else) fails and its worker is replaced. `start` starts the
 * process that reads.
 */
export function createReaderPool(settings: {
	readonly threads?: number;
	readonly timeoutMs?: number;
	readonly start?: (threads: number) => Readers;
	/** How what was read is told: in the language spoken, or kept to be told in any. */
	readonly voice?: () => Voice;
}): ReaderPool {
	const { threads = readerThreads(), start = startReaders, voice = spokenLanguage } = settings;
	let readers: Readers | null = null;
	let lastId = 0;
	let closed = false;
	const turns = createTurns(threads);

	async function askOnce(request: ReadRequest): Promise<ReadAnswer> {
		if (closed) return { id: request.id, stopped: 'crashed', cause: say('photoFiles.closing') };
		if (!readers?.isAlive()) readers = start(threads);
		return readers.ask(request);
	}

	/**
	 * A photo lost with the process gets a second try, since another one may have brought it down, and a last one while no other photo is
	 * being read: what ends the reader then is this photo, or something outside.
	 */
	async function ask(request: ReadRequest): Promise<ReadAnswer & { readonly ms: number }> {
		/** From when its turn came. */
		let begun = 0;
		const once = () => {
			begun = performance.now();
			return askOnce(request);
		};
		const told = (answer: ReadAnswer) => ({ ...answer, ms: Math.round(performance.now() - begun) });
		for (let tries = 0; tries < TRIES_BESIDE_OTHERS; tries++) {
			const answer = await turns.take(once);
			if (!wasLost(answer)) return told(answer);
		}
		return told(await turns.takeAlone(once));
	}

	return {
		async read(source, options) {
			const timeoutMs = settings.timeoutMs ?? Math.round(MAX_READ_SECONDS * 1000 * busyFactor());
			const answer = await ask({ id: ++lastId, source, options, language: voice(), timeoutMs });
			if ('result' in answer) return answer.result;
			return { ...inLanguage(voice(), () => failureOf(answer, timeoutMs)), ms: answer.ms };
		},
		async close() {
			closed = true;
			await readers?.stop();
		},
	};
}
