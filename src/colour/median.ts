/** The middle one of the values in order, the upper of two; the values stay as they are. Throws `RangeError` for none. */
export function medianOf(values: readonly number[]): number {
	const middle = [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
	if (middle === undefined) throw new RangeError('Expected at least one value for a median.');
	return middle;
}
