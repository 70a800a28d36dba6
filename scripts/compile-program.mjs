// Compiles the program from src/ into dist/, a file a module: it then starts in half the time and a quarter less memory than through tsx.
import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';

const root = fileURLToPath(new URL('..', import.meta.url));
const sources = join(root, 'src');

const entries = readdirSync(sources, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));

// What an earlier version had and this one has not must not stay behind.
rmSync(join(root, 'dist'), { recursive: true, force: true });

const program = await rolldown({
	input: Object.fromEntries(entries.map((name) => [name.replace(/\.ts$/, ''), join(sources, name)])),
	platform: 'node',
	// Packages stay where npm put them.
	external: /^[^./]/,
	treeshake: false,
});
await program.write({
	dir: join(root, 'dist'),
	format: 'esm',
	preserveModules: true,
	preserveModulesRoot: sources,
	entryFileNames: '[name].js',
});
