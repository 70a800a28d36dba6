import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

export type BenchServer = {
	readonly address: string;
	readonly process: ChildProcess;
	readonly startMs: number;
	stop(): Promise<void>;
};

/** Starts the real program on a free port and waits for its first answer. */
export async function startServer(homePath: string): Promise<BenchServer> {
	const start = performance.now();
	const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts', '--home', homePath, '--port', '0'], {
		cwd: root,
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
		stop: () =>
			new Promise((resolve) => {
				child.removeAllListeners('exit');
				child.once('exit', () => resolve());
				child.kill('SIGTERM');
			}),
	};
}

/** Resident memory in MB of a process and all below it (Linux); threads are part of their process. */
export function residentMb(pid: number): number {
	const statusOf = (id: string) => {
		try {
			return readFileSync(`/proc/${id}/status`, 'utf8');
		} catch {
			// The process ended between listing and reading: it holds no memory.
			return '';
		}
	};
	const all = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
	const parents = new Map(all.map((id) => [Number(id), Number(/PPid:\s+(\d+)/.exec(statusOf(id))?.[1] ?? 0)]));
	const isOurs = (id: number): boolean => id === pid || (id > 1 && isOurs(parents.get(id) ?? 0));
	const kilobytes = all
		.filter((id) => isOurs(Number(id)))
		.map((id) => Number(/VmRSS:\s+(\d+)/.exec(statusOf(id))?.[1] ?? 0));
	return kilobytes.reduce((sum, one) => sum + one, 0) / 1024;
}

/** CPU seconds used by a process so far, all its threads (Linux). */
export function cpuSeconds(pid: number): number {
	const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
	return (Number(fields[11]) + Number(fields[12])) / 100;
}
