import { fork } from 'node:child_process';
import { programBeside } from '../../process/program-beside.ts';
import type { ReadAnswer, ReadRequest } from './reader-process.ts';
import { READER_ENVIRONMENT, READER_FLAGS } from './reader-settings.ts';

/** A process that reads photos, and nothing but this program's line to it. */
export type Readers = {
	isAlive(): boolean;
	/** The answer to one request; a process that dies answers all it was asked. Never rejects. */
	ask(request: ReadRequest): Promise<ReadAnswer>;
	/** Ends the process at once, whatever it is doing. */
	stop(): Promise<void>;
};

/** How long after its time limit a photo's worker may take to stop by itself before the whole process is ended. */
const GRACE_MS = 5_000;

/** Starts a process with so many reading threads. */
export function startReaders(threads: number): Readers {
	const program = programBeside(import.meta.url, 'reader-process');
	const child = fork(program.path, [String(threads)], {
		execArgv: [...READER_FLAGS, ...program.execArgv],
		env: { ...process.env, ...READER_ENVIRONMENT },
		serialization: 'advanced',
		// Decoders talk to the console about damaged files; the user hears of them through results.
		stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
	});
	const pending = new Map<number, (answer: ReadAnswer) => void>();
	let endedBy: string | null = null;

	function settle(answer: ReadAnswer): void {
		pending.get(answer.id)?.(answer);
		pending.delete(answer.id);
	}
	function end(cause: string): void {
		endedBy ??= cause;
		for (const id of [...pending.keys()]) settle({ id, stopped: 'lost', cause });
	}
	child.on('message', settle);
	child.once('exit', (code, signal) => end(signal ?? `exit status ${code}`));
	child.once('error', (error) => end(error.message));

	return {
		isAlive: () => endedBy === null,
		ask: async (request) => {
			const { id, timeoutMs } = request;
			if (endedBy !== null) return { id, stopped: 'lost', cause: endedBy };
			// A thread stuck in a native library cannot be stopped, only its process.
			const backstop = setTimeout(() => {
				settle({ id, stopped: 'too-slow', cause: 'time limit' });
				child.kill('SIGKILL');
			}, timeoutMs + GRACE_MS);
			try {
				return await new Promise<ReadAnswer>((resolve) => {
					pending.set(id, resolve);
					child.send(request, (error) => {
						if (error) settle({ id, stopped: 'lost', cause: error.message });
					});
				});
			} finally {
				clearTimeout(backstop);
			}
		},
		stop: async () => {
			if (endedBy !== null) return;
			const exited = new Promise((resolve) => child.once('exit', resolve));
			child.kill('SIGKILL');
			await exited;
		},
	};
}
