// Lays out one download in a folder: runtime, program, page, packages for one system, licences, lists of contents.
import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { makeLean } from '../lean-packages.mjs';
import { filesOf, sha256Of } from './archive.mjs';
import { unpackRuntime } from './runtime-package.mjs';
import { packagesImportedBelow } from './runtime-packages.mjs';
import { startFile } from './start-files.mjs';

const RUNTIME_FOLDER = 'runtime';

/** What of the project itself goes in, besides the packages. */
const PROGRAM = [
	'bin',
	'dist',
	'web/dist',
	'web/dist-pocket',
	'web/pocket/pocket.html',
	'web/pocket/pocket.css',
	'demo-images',
];
const TEXTS = ['LICENSE', 'README.md', 'CHANGELOG.md'];

function run(command, args, cwd) {
	const done = spawnSync(command, args, {
		cwd,
		encoding: 'utf8',
		maxBuffer: 1 << 28,
		shell: process.platform === 'win32',
	});
	if (done.status !== 0)
		throw new Error(
			`Expected "${command} ${args.join(' ')}" to end with 0; it ended with ${done.status}:\n${done.stderr}`,
		);
	return done.stdout;
}

/** Puts the runtime's binary and licence into the folder. Its licence is that of the Node project, which the Windows package lacks. */
async function stageRuntime({ runtime, platform }, folder, cache, licence) {
	const target = join(folder, RUNTIME_FOLDER);
	await unpackRuntime(runtime, platform, target, cache);
	if (!existsSync(join(target, 'LICENSE'))) writeFileSync(join(target, 'LICENSE'), licence);
}

/**
 * Installs exactly the packages that the program is made of, at the versions of the lock file, for the target's system: those that are compiled into
 * it, too, since their licences go along.
 */
function stagePackages({ platform, arch, libc }, root, app) {
	const own = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
	const names = packagesImportedBelow(join(root, 'src'));
	const unknown = names.filter((name) => !own.dependencies[name]);
	if (unknown.length > 0)
		throw new Error(
			`Expected every package that src imports among the dependencies; not there: ${unknown.join(', ')}.`,
		);
	const { name, version, description, license, type, bin, allowScripts, overrides } = own;
	const dependencies = Object.fromEntries(names.map((one) => [one, own.dependencies[one]]));
	const manifest = {
		name,
		version,
		private: true,
		description,
		license,
		type,
		bin,
		allowScripts,
		overrides,
		dependencies,
	};
	writeFileSync(join(app, 'package.json'), `${JSON.stringify(manifest, null, '\t')}\n`);
	cpSync(join(root, 'package-lock.json'), join(app, 'package-lock.json'));
	const system = [`--os=${platform}`, `--cpu=${arch}`, ...(libc ? [`--libc=${libc}`] : [])];
	run(
		'npm',
		['install', '--omit=dev', '--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline', ...system],
		app,
	);
	makeLean(join(app, 'node_modules'), platform, arch);
	// npm's own notes name this machine's npm and differ between installs; the list below says what is in.
	rmSync(join(app, 'node_modules', '.package-lock.json'), { force: true });
	rmSync(join(app, 'node_modules', '.bin'), { recursive: true, force: true });
}

/** Licences that a package states in its text but not in its manifest, as read there. */
const LICENCES_IN_TEXT = { 'exif-parser': 'MIT' };

/** The list of parts and licences as CycloneDX JSON, without what would differ between two runs. */
function writeParts({ runtime }, app, file) {
	const parts = JSON.parse(
		run('npm', ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only', '--omit', 'dev'], app),
	);
	delete parts.serialNumber;
	delete parts.metadata.timestamp;
	delete parts.metadata.tools;
	for (const part of parts.components)
		if (LICENCES_IN_TEXT[part.name]) part.licenses ??= [{ license: { id: LICENCES_IN_TEXT[part.name] } }];
	parts.components.push({
		type: 'platform',
		name: 'node',
		version: runtime.version,
		purl: `pkg:npm/${runtime.package}@${runtime.version}`,
		licenses: [{ license: { id: 'MIT' } }],
	});
	writeFileSync(file, `${JSON.stringify(parts, null, '\t')}\n`);
}

/** Lays out the download for `target` in `folder`, which is emptied first. `cache` keeps what is fetched. */
export async function stage(target, root, folder, cache) {
	rmSync(folder, { recursive: true, force: true });
	const app = join(folder, 'app');
	mkdirSync(app, { recursive: true });
	for (const path of PROGRAM) cpSync(join(root, path), join(app, path), { recursive: true });
	for (const { path, from } of filesOf(join(root, 'src/photo/networks')).filter(({ path }) =>
		/\.onnx$|LICENSE|MODEL-CARD/.test(path),
	)) {
		mkdirSync(join(app, 'src/photo/networks', dirname(path)), { recursive: true });
		cpSync(from, join(app, 'src/photo/networks', path));
	}
	for (const name of TEXTS) cpSync(join(root, name), join(folder, basename(name)));
	stagePackages(target, root, app);
	await stageRuntime(target, folder, cache, readFileSync(join(root, 'scripts/pack/LICENSE-of-node')));
	const start = startFile(target.platform, RUNTIME_FOLDER);
	writeFileSync(join(folder, start.name), start.text);
	chmodSync(join(folder, start.name), 0o755);
	writeParts(target, app, join(folder, 'parts.cdx.json'));
	rmSync(join(app, 'package-lock.json'));
	const contents = filesOf(folder).map(({ path, from }) => `${sha256Of(from)}  ${path}`);
	writeFileSync(join(folder, 'contents.sha256'), `${contents.join('\n')}\n`);
}
