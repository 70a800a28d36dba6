import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** A program for a process or thread of its own. */
export type Program = {
	/** Full path of its file. */
	readonly path: string;
	/** What Node must be told before it can run that file. */
	readonly execArgv: readonly string[];
};

/**
 * The program `name` (no ending) in the folder of the module at `from` (its `import.meta.url`): compiled where that module runs compiled,
 * otherwise as TypeScript through tsx, which is found from here since the folder that the program is called from need not hold it.
 */
export function programBeside(from: string, name: string): Program {
	if (!from.endsWith('.ts')) return { path: fileURLToPath(new URL(`./${name}.js`, from)), execArgv: [] };
	const tsx = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
	return { path: fileURLToPath(new URL(`./${name}.ts`, from)), execArgv: ['--import', tsx] };
}
