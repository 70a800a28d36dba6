// Steps of a check: programs of node_modules, run one after another or in rows side by side.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** A step is its name, the program's path below node_modules, and its words. */
const tsc = (name, project) => [
	name,
	'typescript/bin/tsc',
	// What was compiled last time is remembered beside the packages: the second time takes a third of the first.
	...['--noEmit', '--incremental', '--tsBuildInfoFile'],
	`${root}node_modules/.cache/dyelot-types/${project.replaceAll('/', '-')}`,
	...['-p', project],
];
export const LINT = ['format and lint', '@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'];
export const TYPES = [
	tsc('types', 'tsconfig.json'),
	tsc('types of the pure parts, without Node or a browser', 'tsconfig.pure.json'),
	tsc('types of the page', 'web/tsconfig.json'),
];

/**
 * Runs the rows side by side, the steps of a row in their order. The first row's output is shown as it comes, that of another once the rows
 * before it have ended. Where a step fails all others are ended, and so is this process, with 1.
 */
export async function runRows(...rows) {
	const running = new Set();
	let failed = false;
	const runStep = ([name, program, ...words], told) =>
		new Promise((resolve) => {
			const start = performance.now();
			told(`\n== ${name}\n`);
			const shown = told === show;
			const child = spawn(process.execPath, [`${root}node_modules/${program}`, ...words], {
				cwd: root,
				stdio: ['ignore', shown ? 'inherit' : 'pipe', shown ? 'inherit' : 'pipe'],
			});
			running.add(child);
			for (const stream of [child.stdout, child.stderr]) stream?.on('data', told);
			child.once('close', (status) => {
				running.delete(child);
				const ended = failed ? 'was ended' : status === 0 ? 'passed' : 'failed';
				told(`== ${name}: ${ended} after ${((performance.now() - start) / 1000).toFixed(0)} s\n`);
				resolve(status === 0);
			});
		});
	const runRow = async (steps, told) => {
		for (const step of steps) {
			if (failed) return;
			if (await runStep(step, told)) continue;
			failed = true;
			for (const child of running) child.kill();
			return;
		}
	};
	const later = rows.map(() => []);
	const going = rows.map((steps, at) => runRow(steps, at === 0 ? show : (text) => later[at].push(text)));
	for (const [at, row] of going.entries()) {
		await row;
		for (const text of later[at]) show(text);
	}
	if (failed) process.exit(1);
}

const show = (text) => process.stdout.write(text);
