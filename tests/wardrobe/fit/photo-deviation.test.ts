import { describe, expect, it } from 'vitest';
import { deviationOf } from '../../../src/wardrobe/fit/photo-deviation.ts';

/** Share of normal errors in three directions that are no longer than so many standard deviations: the chi distribution with 3 degrees of freedom, integrated. */
function shareWithin(length: number): number {
	const steps = 10_000;
	const density = (at: number) => Math.sqrt(2 / Math.PI) * at * at * Math.exp((-at * at) / 2);
	let sum = 0;
	for (let step = 0; step < steps; step++) sum += density(((step + 0.5) * length) / steps) * (length / steps);
	return sum;
}

describe('what a stated error is in standard deviations', () => {
	it('leaves four in five errors under the one stated', () => {
		expect(shareWithin(9 / deviationOf(9))).toBeCloseTo(0.8, 3);
		expect(deviationOf(0)).toBe(0);
	});

	it('grows no further than the worst photo that was measured, 17, so that an unread one tells as little and no nonsense', () => {
		expect(deviationOf(12)).toBeGreaterThan(deviationOf(11));
		expect(deviationOf(100)).toBe(deviationOf(17));
	});
});
