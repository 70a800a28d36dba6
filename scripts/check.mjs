// What to run before every commit: lint, types and the unit tests that what was changed since the last commit (or the one named) may break,
// in under a minute: `npm run check [-- COMMIT]`. The whole is `npm test`.
import { spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { LINT, root, runRows, TYPES } from './steps.mjs';

const since = process.argv[2] ?? 'HEAD';
const git = (...words) => spawnSync('git', words, { cwd: root, encoding: 'utf8' }).stdout.split('\n').filter(Boolean);
// Not by the runner's own look at what changed: a line in package.json would have it run everything.
const changed = [
	...git('diff', '--name-only', '--diff-filter=d', since),
	...git('ls-files', '--others', '--exclude-standard'),
].filter((path) => /^(src|web|tests|bench)\/.*\.tsx?$/.test(path));
// What drives the whole program is left to `npm test`, see vitest.config.ts.
process.env.DYELOT_CHECK = 'quick';
const unit = [
	`unit tests of the ${changed.length} files changed since ${since}`,
	'vitest/vitest.mjs',
	...['related', '--run', '--project', 'unit', '--passWithNoTests', ...changed],
];

const begun = performance.now();
await runRows([LINT]);
await runRows(changed.length > 0 ? [unit] : [], TYPES);
console.log(`== all in ${((performance.now() - begun) / 1000).toFixed(0)} s on ${availableParallelism()} cores`);
