import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { isNeutral } from '../../../src/colour/neutrality.ts';
import { SAME_WORN } from '../../../src/colour/same-colour.ts';
import { echoesAmong } from '../../../src/wardrobe/pairs/echo.ts';

/** A second opinion on CIEDE2000 (npm `culori`). */
const apart = differenceCiede2000();
const told = ([l, a, b]: Lab65) => ({ mode: 'lab65' as const, l, a, b });

const aLab = fc.tuple(
	fc.double({ min: 40, max: 60, noNaN: true }),
	fc.double({ min: -15, max: 15, noNaN: true }),
	fc.double({ min: -15, max: 15, noNaN: true }),
);
const pieces = fc.array(fc.array(aLab, { maxLength: 3 }), { minLength: 2, maxLength: 4 });

describe('pieces that echo each other', () => {
	it('hold two colours within 10 of each other where both are coloured, else two that are the same', () => {
		let echoes = 0;
		fc.assert(
			fc.property(pieces, (seen) => {
				const echo = echoesAmong(seen);
				const expected = seen[0]!.some((one) =>
					seen[1]!.some(
						(other) => apart(told(one), told(other)) < (isNeutral(one) || isNeutral(other) ? SAME_WORN : 10),
					),
				);
				if (expected) echoes++;
				expect(echo(0, 1)).toBe(expected);
				expect(echo(1, 0)).toBe(expected);
			}),
			{ numRuns: 200, seed: 3 },
		);
		expect(echoes).toBeGreaterThan(20);
	});

	it('may differ by their lightness alone, and nothing else is taken for an echo', () => {
		// About L* 50 and by lightness alone CIEDE2000 is the difference in L*, nearly (CIE 142-2001).
		const [rust, lighter, lightest]: Lab65[] = [
			[46, 38, 40],
			[54, 38, 40],
			[58, 38, 40],
		];
		expect(echoesAmong([[rust!], [lighter!]])(0, 1)).toBe(true);
		expect(echoesAmong([[rust!], [lightest!]])(0, 1)).toBe(false);
	});

	it('may differ more in lightness where nothing tells the light of one of the photos, by 1.6 times, and no more in hue', () => {
		const [rust, lighter, lightest, redder]: Lab65[] = [
			[46, 38, 40],
			[58, 38, 40],
			[63, 38, 40],
			[46, 52, 30],
		];
		const echo = (other: Lab65, untold: boolean) => echoesAmong([[rust!], [other]], [false, untold])(0, 1);
		expect([echo(lighter!, false), echo(lighter!, true)]).toEqual([false, true]);
		expect([echo(lightest!, false), echo(lightest!, true)]).toEqual([false, false]);
		expect([echo(redder!, false), echo(redder!, true)]).toEqual([false, false]);
	});
});
