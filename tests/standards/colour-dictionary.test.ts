import Color from 'colorjs.io';
import dictionary from 'dictionary-of-colour-combinations' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { type Lab65, labFromHex } from '../../src/colour/lab65.ts';
import { pairingsFromReadings } from '../../src/wardrobe/pairs/pairings.ts';
import { supportOf } from '../../src/wardrobe/pairs/partners.ts';
import type { PairContext } from '../../src/wardrobe/pairs/support.ts';
import { aGarment, aReading, aSwatch } from '../support/build-wardrobe.ts';

// A Dictionary of Colour Combinations (Sanzo Wada, 1930s), as the npm package of that name holds it: 159 colours, 348 combinations.
const colours = dictionary.map(({ hex, combinations }) => ({
	lab: labFromHex(hex)!,
	combinations: new Set(combinations),
}));
const together = (one: number, other: number) =>
	[...colours[one]!.combinations].some((number) => colours[other]!.combinations.has(number));
const pairs = colours.flatMap((_, one) => colours.slice(one + 1).map((__, offset) => [one, one + 1 + offset] as const));
const published = pairs.filter(([one, other]) => together(one, other));

const sizeOf = (number: number) => colours.filter(({ combinations }) => combinations.has(number)).length;
/** Its CIEDE2000 works on plain `lab`, whatever the white point: the numbers are handed over as that. */
const opinion = (lab: Lab65) => new Color('lab', [lab[0], lab[1], lab[2]]);

const nothing: PairContext = { palette: { colours: [] }, pairings: [], pairWords: [], wornTogether: [] };
const kindOf = ([one, other]: readonly [number, number], context = nothing) =>
	supportOf(
		aGarment({ id: 'shirt', lab: colours[one]!.lab }),
		aGarment({ id: 'skirt', kind: 'skirt', lab: colours[other]!.lab }),
		context,
	).kind;

describe('published colour combinations', () => {
	it('are the 348 of the dictionary', () => {
		expect(new Set(dictionary.flatMap(({ combinations }) => combinations)).size).toBe(348);
		expect(published.length).toBeGreaterThan(500);
	});

	it('are not told from other pairs by any rule of ours: each kind of support is as frequent among both, within 5 points', () => {
		const others = pairs.filter(([one, other]) => !together(one, other));
		const share = (list: typeof pairs, kind: string) =>
			list.filter((pair) => kindOf(pair) === kind).length / list.length;
		for (const kind of ['base', 'echo', 'unproven'])
			expect(Math.abs(share(published, kind) - share(others, kind))).toBeLessThan(0.05);
	});

	it('count as seen in pictures where colorjs.io finds a picture of both colours within 5, never where it finds none within 10', () => {
		// Each published pair of a combination of two, worn as top and skirt in one picture.
		const twos = published.filter(([one, other]) =>
			[...colours[one]!.combinations].some(
				(number) => colours[other]!.combinations.has(number) && sizeOf(number) === 2,
			),
		);
		const pairings = pairingsFromReadings(
			twos.map(([one, other]) =>
				aReading([aSwatch(colours[one]!.lab, 0.5, 'top'), aSwatch(colours[other]!.lab, 0.5, 'bottom')]),
			),
		);
		const distances = colours.map((one) => colours.map((other) => opinion(one.lab).deltaE(opinion(other.lab), '2000')));
		const shown = (one: number, other: number, within: number) =>
			twos.some(([top, skirt]) => distances[one]![top]! <= within && distances[other]![skirt]! <= within);
		const tried = pairs.filter((_, index) => index % 7 === 0);
		const inspired = ([one, other]: readonly [number, number]) =>
			kindOf([one, other], { ...nothing, pairings }) === 'inspired';
		// Pictures of like colours, within 5, are counted as one: so much of the 10 may be lost.
		expect(tried.filter(([one, other]) => shown(one, other, 5) && !inspired([one, other]))).toEqual([]);
		expect(tried.filter(([one, other]) => !shown(one, other, 10) && inspired([one, other]))).toEqual([]);
		const seen = tried.filter(([one, other]) => shown(one, other, 5)).length;
		expect(seen).toBeGreaterThan(20);
		expect(seen).toBeLessThan(tried.length / 2);
	});
});
