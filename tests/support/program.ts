import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('run-program.ts', import.meta.url));

/** A process of the program, as an operator starts it. */
export type Program = {
	readonly child: ChildProcess;
	/** Everything it wrote, so far. */
	output(): string;
	/** Its lines of JSON, so far. */
	lines(): readonly Readonly<Record<string, unknown>>[];
	/** Resolves with the first line, of the past or the future, that is as wanted; rejects where the process ends before. */
	line(wanted: (line: Readonly<Record<string, unknown>>) => boolean): Promise<Readonly<Record<string, unknown>>>;
	/** Sends the signal; resolves with the exit status once it has ended. */
	stop(signal?: NodeJS.Signals): Promise<number | null>;
};

function parsed(line: string): Readonly<Record<string, unknown>>[] {
	try {
		return [JSON.parse(line)];
	} catch {
		return [];
	}
}

/** Starts `dyelot WORDS` with nothing of this process's environment but the path, and what is given. */
export const startProgram = (words: readonly string[], environment: Readonly<Record<string, string>> = {}): Program =>
	startScript(PROGRAM, words, environment);

/** The same for a script of the tests. */
export function startScript(
	script: string,
	words: readonly string[],
	environment: Readonly<Record<string, string>> = {},
): Program {
	const child = spawn(process.execPath, ['--import', 'tsx', script, ...words], {
		stdio: ['ignore', 'pipe', 'pipe'],
		env: { PATH: process.env.PATH ?? '', HOME: process.env.HOME ?? '', ...environment },
	});
	let written = '';
	const changed = new Set<() => void>();
	for (const stream of [child.stdout!, child.stderr!])
		stream.on('data', (chunk) => {
			written += chunk;
			for (const look of changed) look();
		});
	let ended = false;
	const ending = new Promise<number | null>((resolve) =>
		child.once('close', (code) => {
			ended = true;
			for (const look of changed) look();
			resolve(code);
		}),
	);
	const lines = () => written.split('\n').flatMap(parsed);
	return {
		child,
		output: () => written,
		lines,
		line: (wanted) =>
			new Promise((resolve, reject) => {
				const look = () => {
					const found = lines().find(wanted);
					if (found) resolve(found);
					else if (ended) reject(new Error(`the program ended: ${written.slice(-2000)}`));
					else return;
					changed.delete(look);
				};
				changed.add(look);
				look();
			}),
		stop(signal = 'SIGTERM') {
			child.kill(signal);
			return ending;
		},
	};
}

/** A line with this message. */
export const saying =
	(message: RegExp) =>
	(line: Readonly<Record<string, unknown>>): boolean =>
		message.test(String(line.msg));
