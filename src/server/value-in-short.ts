const MOST_LETTERS = 80;

/** A value that was received, as JSON cut to eighty letters. What is nested too deep to be written has its outermost sign alone. */
export function valueInShort(value: unknown): string {
	try {
		return JSON.stringify(value).slice(0, MOST_LETTERS);
	} catch (error) {
		// The stack ends before the value does; whoever sends that has no use for more.
		if (!(error instanceof RangeError)) throw error;
		return Array.isArray(value) ? '[…' : '{…';
	}
}
