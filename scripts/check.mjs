// What to run before every commit: lint, types and the unit tests that what was changed since the last commit (or the one named) may break:
// `npm run check [-- COMMIT]`. The whole is `npm test`.
import { spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const since = process.argv[2] ?? 'HEAD';
const cache = `${root}node_modules/.cache/dyelot-check`;
const tsc = (project) => [
	'typescript/bin/tsc',
	'--noEmit',
	'--incremental',
	'--tsBuildInfoFile',
	`${cache}/${project.replaceAll('/', '-')}`,
	'-p',
	project,
];

const git = (...words) => spawnSync('git', words, { cwd: root, encoding: 'utf8' }).stdout.split('\n').filter(Boolean);
// Not by the runner's own look at what changed: a line in package.json would have it run everything.
const changed = [
	...git('diff', '--name-only', '--diff-filter=d', since),
	...git('ls-files', '--others', '--exclude-standard'),
].filter((path) => /^(src|web|tests|bench)\/.*\.tsx?$/.test(path));

const steps = [
	['format and lint', ['@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.']],
	['types', tsc('tsconfig.json')],
	['types of the pure parts', tsc('tsconfig.pure.json')],
	['types of the page', tsc('web/tsconfig.json')],
];
if (changed.length > 0)
	steps.push([
		`unit tests of the ${changed.length} files changed since ${since}`,
		['vitest/vitest.mjs', 'related', '--run', '--project', 'unit', '--passWithNoTests', ...changed],
	]);

const begun = performance.now();
for (const [name, [program, ...words]] of steps) {
	const start = performance.now();
	const done = spawnSync(process.execPath, [`${root}node_modules/${program}`, ...words], {
		cwd: root,
		stdio: 'inherit',
	});
	console.log(
		`== ${name}: ${done.status === 0 ? 'passed' : 'failed'} after ${((performance.now() - start) / 1000).toFixed(0)} s`,
	);
	if (done.status !== 0) process.exit(1);
}
console.log(`== all in ${((performance.now() - begun) / 1000).toFixed(0)} s on ${availableParallelism()} cores`);
