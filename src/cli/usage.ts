import { say } from '../language/speak.ts';
import { COMMAND_NAMES, COMMANDS, type CommandName, type CommandWords, type OptionWords } from './command-words.ts';
import { placeholder } from './placeholder.ts';

/** A call that cannot be understood; the command ends with status 2 and shows how `command` is called (null = all of them). */
export class UsageError extends Error {
	readonly command: CommandName | null;

	constructor(message: string, command: CommandName | null) {
		super(message);
		this.command = command;
	}
}

const WIDTH = 78;

const optionWords = (name: string, { value }: OptionWords) => `--${name}${value ? ` ${placeholder(value)}` : ''}`;

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
	return ['dyelot', name, placeholder(takes), ...switches].filter((word) => word !== '').join(' ');
};

/** What `dyelot COMMAND --help` prints. */
export function helpOf(name: CommandName): string {
	const { does, options, example, exampleSays }: CommandWords = COMMANDS[name];
	const told = Object.entries({ ...options, help: { says: 'commands.help' as const } }).map(
		([option, words]) => `  ${optionWords(option, words)}\n${folded(say(words.says), '      ')}`,
	);
	return `${callOf(name)}\n\n${folded(say(does), '')}\n\n${told.join('\n')}\n\n${say('commands.example')}\n  ${example}\n${folded(say(exampleSays), '      ')}`;
}

/** What `dyelot --help` prints. */
export function usage(): string {
	const summaries = COMMAND_NAMES.map((name) => `  ${callOf(name)}\n${folded(say(COMMANDS[name].does), '      ')}`);
	return say('commands.usage', { summaries: summaries.join('\n') });
}
