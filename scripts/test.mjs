// The whole check, in the order that fails fastest. `npm test` and CI run exactly this.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const node = (path, ...args) => [process.execPath, [`${root}node_modules/${path}`, ...args]];

const steps = [
	['format and lint', node('@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.')],
	['types', node('typescript/bin/tsc', '--noEmit', '-p', 'tsconfig.json')],
	[
		'types of the pure parts, without Node or a browser',
		node('typescript/bin/tsc', '--noEmit', '-p', 'tsconfig.pure.json'),
	],
	['types of the page', node('typescript/bin/tsc', '--noEmit', '-p', 'web/tsconfig.json')],
	['dead code', node('knip/bin/knip.js')],
	['unit, standards, layers', node('vitest/vitest.mjs', 'run', '--project', 'unit')],
	['browser', node('vitest/vitest.mjs', 'run', '--project', 'browser')],
];

for (const [name, [command, args]] of steps) {
	const start = Date.now();
	console.log(`\n== ${name}`);
	const done = spawnSync(command, args, { cwd: root, stdio: 'inherit' });
	if (done.status !== 0) {
		console.error(`\n${name}: failed`);
		process.exit(1);
	}
	console.log(`== ${name}: passed in ${((Date.now() - start) / 1000).toFixed(0)} s`);
}
