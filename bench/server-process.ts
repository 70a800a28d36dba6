import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The real program in a process of its own. */
export type ServerProcess = {
	readonly address: string;
	readonly process: ChildProcess;
	readonly startMs: number;
	stop(signal?: NodeJS.Signals): Promise<void>;
};

/** How the program is started: a shell line that becomes the program by `exec "$@"`, and words for Node before it. */
export type StartOptions = {
	readonly shell?: readonly string[];
	readonly nodeWords?: readonly string[];
	/** Words for the program after its own. */
	readonly words?: readonly string[];
	readonly env?: Readonly<Record<string, string>>;
};

/** Starts the real program on a free port and waits for its first answer. */
export async function startServer(
	homePath: string,
	{ shell = [], nodeWords = [], words: more = [], env = {} }: StartOptions = {},
): Promise<ServerProcess> {
	const start = performance.now();
	const program = [
		process.execPath,
		...nodeWords,
		'bin/dyelot.mjs',
		'serve',
		'--home',
		homePath,
		'--port',
		'0',
		...more,
	];
	const [command, ...words] = [...shell, ...program];
	const child = spawn(command!, words, {
		cwd: root,
		env: { ...process.env, ...env },
		stdio: ['ignore', 'pipe', 'inherit'],
	});
	const address = await new Promise<string>((resolve, reject) => {
		let said = '';
		child.stdout.on('data', (chunk: Buffer) => {
			said += chunk.toString();
			const found = /http:\/\/localhost:\d+\//.exec(said);
			if (found) resolve(found[0]);
		});
		child.once('exit', (code) => reject(new Error(`the server ended with ${code}: ${said}`)));
	});
	await fetch(`${address}api/status`);
	return {
		address,
		process: child,
		startMs: performance.now() - start,
		stop: (signal = 'SIGTERM') =>
			new Promise((resolve) => {
				child.once('exit', () => resolve());
				child.kill(signal);
			}),
	};
}

/** How a server that should still run has ended, in words; nothing while it runs. */
export function endOf({ process: { exitCode, signalCode } }: ServerProcess): string[] {
	const end = signalCode ?? exitCode;
	return end === null ? [] : [`the server ended with ${end}`];
}

/** A file of a process under /proc (Linux). */
function toldOf(id: number, file: 'status' | 'stat'): string {
	try {
		return readFileSync(`/proc/${id}/${file}`, 'utf8');
	} catch {
		// The process ended between listing and reading: it holds nothing.
		return '';
	}
}

/** A process and all below it: photos are read in a child of the server. */
function familyOf(pid: number): number[] {
	const all = readdirSync('/proc')
		.filter((name) => /^\d+$/.test(name))
		.map(Number);
	const parents = new Map(all.map((id) => [id, Number(/PPid:\s+(\d+)/.exec(toldOf(id, 'status'))?.[1] ?? 0)]));
	const isOurs = (id: number): boolean => id === pid || (id > 1 && isOurs(parents.get(id) ?? 0));
	return all.filter(isOurs);
}

/** Resident memory in MB of a process and all below it (Linux); threads are part of their process, pages shared by two count twice. */
export function residentMb(pid: number): number {
	const kilobytes = familyOf(pid).map((id) => Number(/VmRSS:\s+(\d+)/.exec(toldOf(id, 'status'))?.[1] ?? 0));
	return kilobytes.reduce((sum, one) => sum + one, 0) / 1024;
}

/** CPU seconds used so far by a process and all below it, those that have ended included (Linux: 100 ticks a second). */
export function cpuSeconds(pid: number): number {
	const ticks = familyOf(pid).map((id) => {
		// After the name in brackets: user and system time are the 12th and 13th field, those of ended children follow (proc(5)).
		const fields = (toldOf(id, 'stat').split(') ')[1] ?? '').split(' ').slice(11, 15);
		return fields.reduce((sum, field) => sum + Number(field), 0);
	});
	return ticks.reduce((sum, one) => sum + one, 0) / 100;
}
