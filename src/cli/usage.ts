import { COMMAND_NAMES, COMMANDS, type CommandName, type CommandWords, type OptionWords } from './command-words.ts';

/** A call that cannot be understood; the command ends with status 2 and shows how `command` is called (null = all of them). */
export class UsageError extends Error {
	readonly command: CommandName | null;

	constructor(message: string, command: CommandName | null) {
		super(message);
		this.command = command;
	}
}

const WIDTH = 78;

const optionWords = (name: string, { value }: OptionWords) => `--${name}${value ? ` ${value}` : ''}`;

/** Folded at blanks so that no line is longer than a narrow terminal. */
function folded(text: string, indent: string): string {
	const lines: string[] = [];
	for (const word of text.split(' ')) {
		const last = lines.at(-1);
		if (last !== undefined && `${indent}${last} ${word}`.length <= WIDTH) lines[lines.length - 1] = `${last} ${word}`;
		else lines.push(word);
	}
	return lines.map((line) => indent + line).join('\n');
}

const callOf = (name: CommandName): string => {
	const { takes, options }: CommandWords = COMMANDS[name];
	const switches = Object.entries(options).map(
		([option, words]) => `[${optionWords(option, words)}]${words.several ? '...' : ''}`,
	);
	return ['dyelot', name, takes, ...switches].filter((word) => word !== '').join(' ');
};

/** What `dyelot COMMAND --help` prints. */
export function helpOf(name: CommandName): string {
	const { does, options, example, exampleSays }: CommandWords = COMMANDS[name];
	const told = Object.entries({ ...options, help: { says: 'this text' } }).map(
		([option, words]) => `  ${optionWords(option, words)}\n${folded(words.says, '      ')}`,
	);
	return `${callOf(name)}\n\n${folded(does, '')}\n\n${told.join('\n')}\n\nExample:\n  ${example}\n${folded(exampleSays, '      ')}`;
}

const summaries = COMMAND_NAMES.map((name) => `  ${callOf(name)}\n${folded(COMMANDS[name].does, '      ')}`).join('\n');

/** What `dyelot --help` prints. */
export const USAGE = `dyelot: real colours from photos, and a small seasonal wardrobe judged by them.
Nothing leaves this machine.

${summaries}

  dyelot COMMAND --help    what a command takes, with an example
  dyelot --version         the program's version

X,Y are pixels of the upright picture. A colour on a screen is not the cloth.
Exit status: 0 all went well, 1 a photo or task failed, 2 the call was wrong.`;
