import { describe, expect, it } from 'vitest';
import { medianLab } from '../../src/colour/median-lab.ts';

describe('the median of colours', () => {
	it('is each coordinate by itself, the upper of two middle ones', () => {
		expect(medianLab(Float32Array.of(50, 9, -3, 70, -9, 4, 60, 1, 8))).toEqual([60, 1, 4]);
		expect(medianLab(Float32Array.of(50, 9, -3, 70, -9, 4))).toEqual([70, 9, 4]);
	});

	it('leaves the colours as they are', () => {
		const labs = Float32Array.of(3, 2, 1, 0, 5, 4, 9, 8, 7);
		medianLab(labs);
		expect([...labs]).toEqual([3, 2, 1, 0, 5, 4, 9, 8, 7]);
	});

	it('refuses none', () => {
		expect(() => medianLab(new Float32Array(0))).toThrow(RangeError);
	});
});
