import { describe, expect, it } from 'vitest';
import { WHITE_D65 } from '../../src/colour/adaptation.ts';
import { chroma, labFromXyz, type Xyz65 } from '../../src/colour/lab65.ts';
import { colourName } from '../../src/colour/name.ts';
import { referenceRows } from '../support/reference.ts';

const greyOf = (luminancePercent: number) =>
	labFromXyz(WHITE_D65.map((value) => (value * luminancePercent) / 100) as unknown as Xyz65);

// Munsell value to luminance factor: ASTM D1535 quintic, and the 1943 renotation table on the magnesium oxide scale (97.5 % reflectance).
const neutrals = referenceRows('munsell-neutrals.csv').map(({ V, Y_astm, L_star_from_Y_astm, Y_1943_table }) => ({
	value: Number(V),
	luminance: Number(Y_astm),
	lightness: Number(L_star_from_Y_astm),
	table: Y_1943_table ? Number(Y_1943_table) : null,
}));

describe('Munsell neutrals', () => {
	it.each(neutrals)('N $value is an exact grey of the lightness worked out apart', ({ luminance, lightness }) => {
		const lab = greyOf(luminance);
		expect(chroma(lab)).toBeLessThan(1e-9);
		expect(Math.abs(lab[0] - lightness)).toBeLessThan(0.002);
	});

	it('stand near ten times their value in L*, as Munsell value and L* were made to agree', () => {
		for (const { value, luminance } of neutrals.filter(({ value }) => value >= 1))
			expect(Math.abs(greyOf(luminance)[0] - 10 * value)).toBeLessThan(1.5);
	});

	it('of the renotation table itself, brought to a perfect white, agree within 0.5 L*', () => {
		const listed = neutrals.filter(({ table, value }) => table !== null && value >= 1);
		expect(listed.length).toBeGreaterThan(8);
		for (const { luminance, table } of listed)
			expect(Math.abs(greyOf(table! * 0.975)[0] - greyOf(luminance)[0])).toBeLessThan(0.5);
	});

	// ISCC-NBS, NBS Special Publication 440: the neutral blocks end at Munsell values 2.5, 4.5, 6.5 and 8.5 (borders from memory).
	it.each([
		['black', 0, 2],
		['dark gray', 3, 4],
		['medium gray', 5, 6],
		['light gray', 7, 8],
		['white', 9, 10],
	] as const)('are called %s between N %d and N %d', (name, from, to) => {
		const within = neutrals.filter(({ value }) => value >= from && value <= to);
		expect(within.length).toBeGreaterThan(1);
		expect(within.map(({ luminance }) => colourName(greyOf(luminance)))).toEqual(within.map(() => name));
	});
});
