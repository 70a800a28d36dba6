import { eitherText } from '../language/numbers.ts';
import { say } from '../language/speak.ts';
import type { CommandName } from './command-words.ts';
import { UsageError } from './usage.ts';

/** A whole number in digits; NaN for anything else, `0x10` and `1e3` too. */
export const wholeNumberOf = (text: string): number => (/^\d{1,9}$/.test(text) ? Number(text) : Number.NaN);

/** Numbers of "X,Y" or "X,Y,L"; `count` says how many are allowed. Throws `UsageError`. */
export function numbersOf(text: string, option: string, count: readonly number[], command: CommandName): number[] {
	const words = text.split(',');
	if (!count.includes(words.length) || !words.every((word) => /^\d{1,9}(\.\d+)?$/.test(word))) {
		throw new UsageError(
			say('cli.numbers', { numbers: eitherText(count.map(String)), option, received: text }),
			command,
		);
	}
	return words.map(Number);
}
