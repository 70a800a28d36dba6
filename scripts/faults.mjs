// The long form of tests/faults: `npm run faults [-- -t "a slow disk"]` prints each figure beside what it must be. Takes about half an hour.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const words = ['run', '--project', 'unit', 'tests/faults', '--disableConsoleIntercept', ...process.argv.slice(2)];
const done = spawnSync(process.execPath, [`${root}node_modules/vitest/vitest.mjs`, ...words], {
	cwd: root,
	env: { ...process.env, DYELOT_FAULTS: 'long' },
	stdio: 'inherit',
});
process.exit(done.status ?? 1);
