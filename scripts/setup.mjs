// Brings node_modules, dist (the program compiled) and web/dist (the page) up to date, so that `npm start`, `npm test` and
// `npx dyelot` work on a fresh clone. With --all also what tests and benches need. It speaks on the standard error: a command's output
// may be piped on.
// Node built-ins only: it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeLean } from './lean-packages.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const at = (...parts) => join(root, ...parts);

const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
	console.error(`Dyelot needs Node 20.19 or newer to run; this is Node ${process.versions.node}.`);
	process.exit(1);
}

function run(command, args, purpose) {
	const done = spawnSync(command, args, { cwd: root, stdio: ['inherit', 2, 2] });
	if (done.status !== 0) {
		console.error(
			`Could not ${purpose}: ${[command, ...args].join(' ')} ended with ${done.status ?? done.error?.message}.`,
		);
		process.exit(1);
	}
}

function hashOf(paths) {
	// Any Node that runs the program may use the same packages: their compiled parts are made for Node-API, not for a version.
	const hash = createHash('sha256').update(`${process.platform} ${process.arch}`);
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

const isThere = (path) => existsSync(at(path)) && statSync(at(path)).size > 0;

/** Runs `make` only when `key` differs from what the stamp file says, then writes the stamp. */
function onceFor(stamp, key, stillThere, make) {
	if (stillThere && existsSync(stamp) && readFileSync(stamp, 'utf8') === key) return;
	make();
	mkdirSync(join(stamp, '..'), { recursive: true });
	writeFileSync(stamp, key);
}

/** Installs from the lock file: all packages, or without those that only tests, benches and lint use. */
function install(all) {
	console.error('Installing the packages that Dyelot is built from (once, under a minute on most lines) ...');
	// No package here needs its install script; one of them would fetch GPU files from elsewhere.
	const args = ['ci', all ? '--include=dev' : '--omit=dev', '--ignore-scripts', '--no-fund', '--no-audit'];
	const npm = process.env.npm_execpath;
	if (npm?.endsWith('.js')) run(process.execPath, [npm, ...args], 'install the packages');
	else run(process.platform === 'win32' ? 'npm.cmd' : 'npm', args, 'install the packages');
	makeLean(at('node_modules'), process.platform, process.arch);
}

const installStamp = at('node_modules', '.dyelot-install');
const lock = hashOf(['package-lock.json']);
const installed = existsSync(installStamp) ? readFileSync(installStamp, 'utf8') : '';
// A command's own words are none of ours: bin/dyelot.mjs imports this file.
const wantsAll = process.argv[1] === fileURLToPath(import.meta.url) && process.argv.includes('--all');
if (installed !== `${lock} all` && (wantsAll || installed !== `${lock} start`)) {
	install(wantsAll);
	writeFileSync(installStamp, `${lock} ${wantsAll ? 'all' : 'start'}`);
}

const programSources = [...filesBelow('src').filter((path) => path.endsWith('.ts')), 'scripts/compile-program.mjs'];
onceFor(
	at('node_modules', '.dyelot-program'),
	hashOf([...programSources, 'package-lock.json']),
	isThere('dist/cli/run-cli.js'),
	() => {
		console.error('Compiling the program ...');
		run(process.execPath, [at('scripts/compile-program.mjs')], 'compile the program');
	},
);

const pageSources = [
	...filesBelow('web'),
	...filesBelow('src/colour'),
	...filesBelow('src/wardrobe'),
	...filesBelow('src/reading'),
	'vite.config.ts',
	'vite.pocket.config.ts',
];
const built = isThere('web/dist/index.html') && isThere('web/dist-pocket/pocket.js');
onceFor(at('node_modules', '.dyelot-page'), hashOf([...pageSources, 'package-lock.json']), built, () => {
	console.error('Building the page ...');
	for (const config of ['vite.config.ts', 'vite.pocket.config.ts']) {
		run(
			process.execPath,
			[at('node_modules/vite/bin/vite.js'), 'build', '--config', config, '--logLevel', 'warn'],
			'build the page',
		);
	}
});
