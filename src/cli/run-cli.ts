import { USAGE, UsageError } from './usage.ts';

/** A command takes its words and returns the exit status. */
export type Command = (words: string[]) => Promise<number>;

/** Loaded when asked for: `read` needs no server, `serve` no reader. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
	serve: async () => (await import('./commands/serve.ts')).serveCommand,
	demo: async () => (await import('./commands/demo.ts')).demoCommand,
	report: async () => (await import('./commands/report.ts')).reportCommand,
	read: async () => (await import('./commands/read.ts')).readCommand,
	palette: async () => (await import('./commands/palette.ts')).paletteCommand,
	check: async () => (await import('./commands/check.ts')).checkCommand,
	backup: async () => (await import('./commands/backup.ts')).backupCommand,
	restore: async () => (await import('./commands/backup.ts')).restoreCommand,
};

async function run(words: string[]): Promise<number> {
	const [name, ...rest] = words;
	if (name === undefined || name === 'help' || words.includes('--help')) {
		console.log(USAGE);
		return name === undefined ? 2 : 0;
	}
	const command = commands[name];
	if (!command) throw new UsageError(`Expected a command (${Object.keys(commands).join(', ')}); received "${name}".`);
	return (await command())(rest);
}

/** Runs one command line (without "dyelot" itself) and returns the exit status. */
export async function runCli(words: string[]): Promise<number> {
	try {
		return await run(words);
	} catch (error) {
		const wrongCall = error instanceof UsageError || (error as { code?: string }).code?.startsWith('ERR_PARSE_ARGS');
		console.error(wrongCall ? `${(error as Error).message}\n\n${USAGE}` : (error as Error).message);
		return wrongCall ? 2 : 1;
	}
}
