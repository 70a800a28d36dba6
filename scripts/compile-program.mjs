// Compiles the program from src/ into dist/: a file for each program that is started by name, and pieces that they share. A start reads a
// dozen files instead of six hundred.
import { rmSync } from 'node:fs';
import { isAbsolute, join, posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';

const root = fileURLToPath(new URL('..', import.meta.url));
const sources = join(root, 'src');

/** What is started by its name: the command, and the programs beside it (`src/process`). */
const PROGRAMS = [
	'cli/run-cli',
	'app/prove-worker',
	'app/beside/worker',
	'app/beside/judge-worker',
	'photo/readers/reader-process',
	'photo/readers/worker',
];

/**
 * Packages that a start reads in hundreds of files are taken into the program, with those that they ask for; the others stay where npm put
 * them. What has compiled parts, threads or files of its own cannot be taken in.
 */
const TAKEN_IN = /^(@fastify\/[a-z-]+|ajv|culori|fastify|fastify-plugin|file-type|kysely|typebox)(\/|$)/;
const KEPT = new Set(['pino']);

const isPackage = (name) => /^[^./]/.test(name) && !isAbsolute(name);
const staysOutside = (name, importer = '') =>
	isPackage(name) && (KEPT.has(name) || !(TAKEN_IN.test(name) || importer.includes('node_modules')));

const OWN_ADDRESS = 'import.meta.url';
const MARK = '__OWN_ADDRESS__';

/** Lets each module know the address that it would have as a file of its own, since it finds files by it. */
const ownAddresses = {
	name: 'own-addresses',
	transform: (code, path) =>
		path.startsWith(sources) && code.includes(OWN_ADDRESS)
			? code.replaceAll(
					OWN_ADDRESS,
					`${MARK}(${JSON.stringify(relative(sources, path).replaceAll(sep, '/').replace(/\.ts$/, '.js'))})`,
				)
			: undefined,
	renderChunk: (code, { fileName }) =>
		code.replaceAll(
			new RegExp(`${MARK}\\("([^"]+)"\\)`, 'g'),
			(_, path) =>
				`new URL(${JSON.stringify(`./${posix.relative(posix.dirname(fileName), path)}`)}, import.meta.url).href`,
		),
};

// What an earlier version had and this one has not must not stay behind.
rmSync(join(root, 'dist'), { recursive: true, force: true });

const program = await rolldown({
	input: Object.fromEntries(PROGRAMS.map((name) => [name, join(sources, `${name}.ts`)])),
	platform: 'node',
	external: staysOutside,
	plugins: [ownAddresses],
});
await program.write({
	dir: join(root, 'dist'),
	format: 'esm',
	entryFileNames: '[name].js',
	chunkFileNames: 'shared/[name]-[hash].js',
});
