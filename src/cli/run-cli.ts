import { backupCommand, restoreCommand } from './commands/backup.ts';
import { checkCommand } from './commands/check.ts';
import { demoCommand } from './commands/demo.ts';
import { paletteCommand } from './commands/palette.ts';
import { readCommand } from './commands/read.ts';
import { reportCommand } from './commands/report.ts';
import { serveCommand } from './commands/serve.ts';
import { USAGE, UsageError } from './usage.ts';

/** A command takes its words and returns the exit status. */
export type Command = (words: string[]) => Promise<number>;

const commands: Readonly<Record<string, Command>> = {
	serve: serveCommand,
	demo: demoCommand,
	report: reportCommand,
	read: readCommand,
	palette: paletteCommand,
	check: checkCommand,
	backup: backupCommand,
	restore: restoreCommand,
};

async function run(words: string[]): Promise<number> {
	const [name, ...rest] = words;
	if (name === undefined || name === 'help' || words.includes('--help')) {
		console.log(USAGE);
		return name === undefined ? 2 : 0;
	}
	const command = commands[name];
	if (!command) throw new UsageError(`Expected a command (${Object.keys(commands).join(', ')}); received "${name}".`);
	return command(rest);
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
