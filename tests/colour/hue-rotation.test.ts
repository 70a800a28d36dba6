import { describe, expect, it } from 'vitest';
import { hueRotation } from '../../src/colour/hue-rotation.ts';

describe("the table behind CIEDE2000's rotation in the blues", () => {
	// Sharma, Wu, Dalal (2005), equations 16 and 21, written out.
	const written = (degrees: number) => Math.sin(2 * 30 * Math.exp(-(((degrees - 275) / 25) ** 2)) * (Math.PI / 180));

	it('is within 1e-11 of the formula, all the way round', () => {
		for (let step = 0; step < 36_000; step++) {
			const degrees = step / 100 + 0.0037;
			const radians = (degrees * Math.PI) / 180;
			expect(Math.abs(hueRotation(Math.cos(radians), Math.sin(radians)) - written(degrees))).toBeLessThan(1e-11);
		}
	});

	it('meets the formula exactly on the axes', () => {
		expect(hueRotation(1, 0)).toBe(0);
		expect(hueRotation(0, 1)).toBe(0);
		expect(hueRotation(-1, 0)).toBeCloseTo(written(180), 14);
		expect(hueRotation(0, -1)).toBeCloseTo(written(270), 14);
	});
});
