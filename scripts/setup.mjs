// Brings node_modules and web/dist up to date, so that `npm start` and `npm test` work on a fresh clone.
// Node built-ins only: it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const at = (...parts) => join(root, ...parts);

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
	console.error(`Dyelot needs Node 20.19 or newer to run; this is Node ${process.versions.node}.`);
	process.exit(1);
}

function run(command, args, purpose) {
	const done = spawnSync(command, args, { cwd: root, stdio: 'inherit' });
	if (done.status !== 0) {
		console.error(
			`Could not ${purpose}: ${[command, ...args].join(' ')} ended with ${done.status ?? done.error?.message}.`,
		);
		process.exit(1);
	}
}

function hashOf(paths) {
	const hash = createHash('sha256').update(process.version);
	for (const path of paths) hash.update(path).update(readFileSync(at(path)));
	return hash.digest('hex');
}

function filesBelow(folder) {
	return readdirSync(at(folder), { withFileTypes: true, recursive: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name).slice(root.length))
		.filter((path) => !path.startsWith(join('web', 'dist')))
		.sort();
}

/** Runs `make` only when `key` differs from what the stamp file says, then writes the stamp. */
function onceFor(stamp, key, stillThere, make) {
	if (stillThere && existsSync(stamp) && readFileSync(stamp, 'utf8') === key) return;
	make();
	mkdirSync(join(stamp, '..'), { recursive: true });
	writeFileSync(stamp, key);
}

onceFor(at('node_modules', '.dyelot-install'), hashOf(['package-lock.json']), existsSync(at('node_modules')), () => {
	console.log('Installing the packages that Dyelot is built from (once, under a minute on most lines) ...');
	// No package here needs its install script; one of them would fetch GPU files from elsewhere.
	const args = ['ci', '--include=dev', '--ignore-scripts', '--no-fund', '--no-audit'];
	const npm = process.env.npm_execpath;
	if (npm?.endsWith('.js')) run(process.execPath, [npm, ...args], 'install the packages');
	else run(process.platform === 'win32' ? 'npm.cmd' : 'npm', args, 'install the packages');
});

const pageSources = [
	...filesBelow('web'),
	...filesBelow('src/colour'),
	...filesBelow('src/wardrobe'),
	'vite.config.ts',
	'vite.pocket.config.ts',
];
const built = ['web/dist/index.html', 'web/dist-pocket/pocket.js'].every(
	(path) => existsSync(at(path)) && statSync(at(path)).size > 0,
);
onceFor(at('node_modules', '.dyelot-page'), hashOf([...pageSources, 'package-lock.json']), built, () => {
	console.log('Building the page ...');
	for (const config of ['vite.config.ts', 'vite.pocket.config.ts']) {
		run(
			process.execPath,
			[at('node_modules/vite/bin/vite.js'), 'build', '--config', config, '--logLevel', 'warn'],
			'build the page',
		);
	}
});
