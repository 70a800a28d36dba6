import { converter } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	afterMatrix,
	applyMatrix,
	bradfordMatrix,
	inverseMatrix,
	WHITE_D65,
	type Xyz,
} from '../../src/colour/adaptation.ts';
import { type Lab65, xyzFromLab } from '../../src/colour/lab65.ts';
import { adaptXyz, WHITE_A, WHITE_D50 } from '../support/other-whites.ts';

const aColour: fc.Arbitrary<Lab65> = fc.tuple(
	fc.double({ min: 5, max: 95, noNaN: true }),
	fc.double({ min: -50, max: 50, noNaN: true }),
	fc.double({ min: -50, max: 50, noNaN: true }),
);

describe('adapting to another white', () => {
	it('brings one white exactly to the other and back', () => {
		for (const [index, value] of adaptXyz(WHITE_A, WHITE_A, WHITE_D65).entries())
			expect(value).toBeCloseTo(WHITE_D65[index]!, 12);
		const there = bradfordMatrix(WHITE_D50, WHITE_D65);
		const back = afterMatrix(inverseMatrix(there), there);
		for (const [index, value] of back.entries()) expect(value).toBeCloseTo(index % 4 === 0 ? 1 : 0, 12);
	});

	it('does nothing at degree 0', () => {
		const xyz: Xyz = [0.3, 0.4, 0.2];
		for (const [index, value] of adaptXyz(xyz, WHITE_A, WHITE_D65, 0).entries())
			expect(value).toBeCloseTo(xyz[index]!, 12);
	});

	it('is what culori does between D65 and D50, within 0.0005', () => {
		const toXyz50 = converter('xyz50');
		fc.assert(
			fc.property(aColour, (lab) => {
				const opinion = toXyz50({ mode: 'lab65', l: lab[0], a: lab[1], b: lab[2] });
				const own = adaptXyz(xyzFromLab(lab) as Xyz, WHITE_D65, WHITE_D50);
				// culori takes D50 from its chromaticity, we from the ICC's XYZ: the whites differ by 0.0002.
				for (const [index, value] of [opinion.x, opinion.y, opinion.z].entries())
					expect(Math.abs(own[index]! - value)).toBeLessThan(5e-4);
			}),
		);
	});

	it('refuses a white without light and a matrix without an inverse', () => {
		expect(() => bradfordMatrix([0, 0, 0], WHITE_D65)).toThrow(RangeError);
		expect(() => inverseMatrix([1, 2, 3, 2, 4, 6, 0, 0, 1])).toThrow(RangeError);
		expect(applyMatrix([1, 0, 0, 0, 1, 0, 0, 0, 1], [1, 2, 3])).toEqual([1, 2, 3]);
	});
});
