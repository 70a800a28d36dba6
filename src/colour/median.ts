/**
 * The value that would stand at place `nth` (0 = the least) if the values lay in order; they are put into another order on the way, in place.
 * Hoare's FIND (1961): linear in the number of values, where sorting them all is not. `nth` lies within the values.
 */
export function nthSmallest(values: Float64Array | Float32Array, nth: number): number {
	let [left, right] = [0, values.length - 1];
	while (left < right) {
		const pivot = values[nth]!;
		let [low, high] = [left, right];
		while (low <= high) {
			while (values[low]! < pivot) low++;
			while (pivot < values[high]!) high--;
			if (low > high) break;
			const value = values[low]!;
			values[low++] = values[high]!;
			values[high--] = value;
		}
		if (high < nth) left = low;
		if (nth < low) right = high;
	}
	return values[nth]!;
}

/** The middle one of the values in order, the upper of two; the values stay as they are. Throws `RangeError` for none. */
export function medianOf(values: readonly number[] | Float32Array): number {
	if (values.length === 0) throw new RangeError('Expected at least one value for a median.');
	return nthSmallest(new Float64Array(values), Math.floor(values.length / 2));
}
