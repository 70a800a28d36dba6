import { describe, expect, it } from 'vitest';
import { WHITE_D65, type Xyz } from '../../src/colour/adaptation.ts';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { type Lab65, labFromSrgb8, labFromXyz, srgbFromLab, type Xyz65 } from '../../src/colour/lab65.ts';
import { adaptXyz, WHITE_D50 } from '../support/other-whites.ts';
import { numbersOf, referenceRows } from '../support/reference.ts';

/** CIE 15:2018, equations 8.3 to 8.6 backwards, for a stated white: the published chart Lab is under D50, which the program itself never uses. */
function xyzFromLabUnder([L, a, b]: readonly number[], white: Xyz): Xyz {
	const inverse = (t: number) => (t > 6 / 29 ? t ** 3 : (t - 4 / 29) * 3 * (6 / 29) ** 2);
	const fy = (L! + 16) / 116;
	return [white[0] * inverse(fy + a! / 500), white[1] * inverse(fy), white[2] * inverse(fy - b! / 200)];
}

const patches = referenceRows('colorchecker24.csv').map((row) => {
	const lab50 = numbersOf(row, 'L_pre2014', 'a_pre2014', 'b_pre2014');
	const lab = labFromXyz(adaptXyz(xyzFromLabUnder(lab50, WHITE_D50), WHITE_D50, WHITE_D65) as Xyz65);
	return { name: row.name!, lab, srgb: numbersOf(row, 'sR_pascale', 'sG_pascale', 'sB_pascale') };
});

// Lab: X-Rite, charts before November 2014. sRGB: Pascale 2006, worked out from the same Lab by Bradford.
describe('the 24-patch chart: published Lab against published sRGB', () => {
	it('is complete', () => expect(patches).toHaveLength(24));

	it('gives the published 8-bit sRGB in all but one of 72 channels, and that one within 1', () => {
		const steps = patches.flatMap(({ lab, srgb }) =>
			srgbFromLab(lab).map((value, channel) =>
				Math.abs(Math.min(255, Math.max(0, Math.round(value * 255))) - srgb[channel]!),
			),
		);
		expect(steps.filter((step) => step > 0).length).toBeLessThanOrEqual(1);
		expect(Math.max(...steps)).toBeLessThanOrEqual(1);
	});

	// Cyan lies outside sRGB, so its published sRGB is cut; the others differ by 8-bit rounding only.
	it.each(patches.filter(({ name }) => name !== 'cyan'))(
		'$name: published sRGB gives back the published Lab within 0.75',
		({ lab, srgb }) => {
			const [r, g, b] = srgb as [number, number, number];
			expect(deltaE2000(labFromSrgb8(r, g, b), lab)).toBeLessThan(0.75);
		},
	);

	it('agrees with the Lab under D65 worked out apart from this program', () => {
		for (const [index, row] of referenceRows('colorchecker24-derived.csv').entries()) {
			const apart = numbersOf(row, 'L65_pre2014', 'a65_pre2014', 'b65_pre2014') as unknown as Lab65;
			expect(deltaE2000(patches[index]!.lab, apart)).toBeLessThan(0.02);
		}
	});
});
