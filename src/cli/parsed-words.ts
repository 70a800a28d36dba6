import { type ParseArgsConfig, parseArgs } from 'node:util';
import { say } from '../language/speak.ts';
import { COMMANDS, type CommandName, type CommandWords, type OptionWords } from './command-words.ts';
import { placeholder } from './placeholder.ts';
import { UsageError } from './usage.ts';

type Value<Option extends OptionWords> = Option extends { readonly value: string }
	? Option extends { readonly several: true }
		? readonly string[]
		: string
	: boolean;

type Values<Name extends CommandName> = {
	readonly [Option in keyof (typeof COMMANDS)[Name]['options']]?: Value<
		Extract<(typeof COMMANDS)[Name]['options'][Option], OptionWords>
	>;
};

/** The words after a command: its options by name, and the rest in order. */
export type ParsedWords<Name extends CommandName> = {
	readonly values: Values<Name>;
	readonly rest: readonly string[];
};

const parserOptions = ({ options }: CommandWords): NonNullable<ParseArgsConfig['options']> =>
	Object.fromEntries(
		Object.entries(options).map(([name, { value, several }]) => [
			name,
			{ type: value === undefined ? 'boolean' : 'string', multiple: several ?? false },
		]),
	);

function checkOption(command: CommandName, name: string, rawName: string, value: string | undefined): void {
	const { options }: CommandWords = COMMANDS[command];
	const option = options[name];
	if (!option) {
		const taken = Object.keys(options).map((one) => `--${one}`);
		throw new UsageError(say('cli.noOption', { command, known: taken.join(', '), received: rawName }), command);
	}
	if (option.value !== undefined && (value === undefined || value.trim() === ''))
		throw new UsageError(say('cli.noValue', { value: placeholder(option.value), option: name }), command);
	if (option.value === undefined && value !== undefined)
		throw new UsageError(say('cli.valueToo', { option: name, value }), command);
}

function checkRest(command: CommandName, rest: readonly string[]): void {
	const { takes, least, most }: CommandWords = COMMANDS[command];
	if (rest.length >= least && rest.length <= most) return;
	const received =
		rest.length === 0
			? say('cli.none')
			: rest.length > 3
				? String(rest.length)
				: rest.map((word) => `"${word}"`).join(', ');
	const expected =
		most === 0
			? say('cli.onlyOptions')
			: most === 1
				? say('cli.oneOf', { what: placeholder(takes) })
				: say('cli.someOf', { what: placeholder(takes.replace('...', '')) });
	throw new UsageError(say('cli.words', { expected, command, received }), command);
}

/** Parses the words after a command by what {@link COMMANDS} says of it. Throws {@link UsageError}. */
export function parsedWords<Name extends CommandName>(command: Name, words: readonly string[]): ParsedWords<Name> {
	const { values, positionals, tokens } = parseArgs({
		args: [...words],
		options: parserOptions(COMMANDS[command]),
		allowPositionals: true,
		strict: false,
		tokens: true,
	});
	for (const token of tokens) if (token.kind === 'option') checkOption(command, token.name, token.rawName, token.value);
	checkRest(command, positionals);
	return { values: values as Values<Name>, rest: positionals };
}
