import type { Lab65 } from './lab65.ts';
import { nthSmallest } from './median.ts';

/** The median of each coordinate of L, a, b triples, by itself. Throws `RangeError` for none. */
export function medianLab(labs: Float32Array): Lab65 {
	if (labs.length === 0) throw new RangeError('Expected at least one colour for a median.');
	const median = (axis: 0 | 1 | 2) => {
		const values = new Float64Array(labs.length / 3);
		for (let i = 0; i < values.length; i++) values[i] = labs[i * 3 + axis]!;
		return nthSmallest(values, Math.floor(values.length / 2));
	};
	return [median(0), median(1), median(2)];
}
