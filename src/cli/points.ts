import { UsageError } from './usage.ts';

/** Numbers of "X,Y" or "X,Y,L"; `count` says how many are allowed. Throws `UsageError`. */
export function numbersOf(text: string, option: string, count: readonly number[]): number[] {
	const numbers = text.split(',').map(Number);
	if (!count.includes(numbers.length) || numbers.some((n) => !Number.isFinite(n) || n < 0)) {
		throw new UsageError(
			`Expected ${count.join(' or ')} numbers with commas between for ${option}; received "${text}".`,
		);
	}
	return numbers;
}
