import Color from 'colorjs.io';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { deltaE2000Of } from '../../src/colour/delta-e-many.ts';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { numbersOf, referenceRows } from '../support/reference.ts';

// Sharma, Wu, Dalal (2005), Color Res. Appl. 30(1), 21-30, Table 1: 34 pairs, to 4 decimals.
const pairs = referenceRows('ciede2000-sharma.csv').map((row) => {
	const [L1, a1, b1, L2, a2, b2, expected] = numbersOf(row, 'L1', 'a1', 'b1', 'L2', 'a2', 'b2', 'de00');
	return {
		pair: row.pair,
		one: [L1, a1, b1] as unknown as Lab65,
		other: [L2, a2, b2] as unknown as Lab65,
		expected: expected!,
	};
});

describe('the published CIEDE2000 pairs', () => {
	it('are all 34 there', () => expect(pairs).toHaveLength(34));

	it.each(pairs)(
		'pair $pair comes out as published, one by one and many at once, in either order',
		({ one, other, expected }) => {
			for (const [a, b] of [
				[one, other],
				[other, one],
			] as const) {
				expect(deltaE2000(a, b)).toBeCloseTo(expected, 4);
				expect(deltaE2000Of(a[0], a[1], a[2], b[0], b[1], b[2])).toBeCloseTo(expected, 4);
			}
		},
	);

	it.each(pairs)('pair $pair is what colorjs.io says too', ({ one, other }) => {
		// colorjs.io takes the difference of its D50 "lab" numbers; the formula is the same for either white.
		const opinion = new Color('lab', [one[0], one[1], one[2]]).deltaE(
			new Color('lab', [other[0], other[1], other[2]]),
			{ method: '2000' },
		);
		expect(deltaE2000(one, other)).toBeCloseTo(opinion, 6);
	});
});
