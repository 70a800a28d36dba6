import { say, speak } from '../language/speak.ts';
import { sentenceOfSystemError } from '../store/system-error.ts';
import { COMMAND_NAMES, type CommandName } from './command-words.ts';
import { languageAsked, languageOfTerminal } from './language-of-terminal.ts';
import { helpOf, UsageError, usage } from './usage.ts';
import { programVersion } from './version.ts';

/** A command takes its words and returns the exit status. */
type Command = (words: readonly string[]) => Promise<number>;

/** Loaded when asked for: `read` needs no server, `serve` no reader. */
const commands: Readonly<Record<CommandName, () => Promise<Command>>> = {
	serve: async () => (await import('./commands/serve.ts')).serveCommand,
	host: async () => (await import('./commands/host.ts')).hostCommand,
	work: async () => (await import('./commands/work.ts')).workCommand,
	demo: async () => (await import('./commands/demo.ts')).demoCommand,
	report: async () => (await import('./commands/report.ts')).reportCommand,
	read: async () => (await import('./commands/read.ts')).readCommand,
	palette: async () => (await import('./commands/palette.ts')).paletteCommand,
	check: async () => (await import('./commands/check.ts')).checkCommand,
	backup: async () => (await import('./commands/backup.ts')).backupCommand,
	restore: async () => (await import('./commands/restore.ts')).restoreCommand,
};

const commandIn = (word: string | undefined): CommandName | undefined => COMMAND_NAMES.find((name) => name === word);

async function run(words: readonly string[]): Promise<number> {
	const [first, ...rest] = words;
	if (first === '--version') {
		console.log(`dyelot ${programVersion()}`);
		return 0;
	}
	if (first === undefined || first === 'help' || first === '--help') {
		const command = commandIn(rest[0]);
		console.log(command ? helpOf(command) : usage());
		return first === undefined ? 2 : 0;
	}
	const name = commandIn(first);
	if (!name) throw new UsageError(say('cli.noCommand', { commands: COMMAND_NAMES.join(', '), received: first }), null);
	if (rest.includes('--help')) {
		console.log(helpOf(name));
		return 0;
	}
	return (await commands[name]())(rest);
}

/** Runs one command line (without "dyelot" itself) and returns the exit status. */
export async function runCli(words: readonly string[]): Promise<number> {
	speak(languageOfTerminal(process.env));
	try {
		const { rest, language } = languageAsked(words);
		if (language) speak(language);
		return await run(rest);
	} catch (error) {
		if (error instanceof UsageError) {
			console.error(`${error.message}\n\n${error.command ? helpOf(error.command) : usage()}`);
			return 2;
		}
		console.error(sentenceOfSystemError(error) ?? (error as Error).message);
		return 1;
	}
}
