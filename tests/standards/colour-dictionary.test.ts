import dictionary from 'dictionary-of-colour-combinations' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { chroma, hueDegrees, type Lab65, labFromHex } from '../../src/colour/lab65.ts';
import { supportOf } from '../../src/wardrobe/pairs/partners.ts';
import type { PairContext } from '../../src/wardrobe/pairs/support.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { aGarment } from '../support/build-wardrobe.ts';

// A Dictionary of Colour Combinations (Sanzo Wada, 1930s), as the npm package of that name holds it: 159 colours, 348 combinations.
const colours = dictionary.map(({ hex, combinations }) => ({
	lab: labFromHex(hex)!,
	combinations: new Set(combinations),
}));
const together = (one: number, other: number) =>
	[...colours[one]!.combinations].some((number) => colours[other]!.combinations.has(number));
const pairs = colours.flatMap((_, one) => colours.slice(one + 1).map((__, offset) => [one, one + 1 + offset] as const));
const published = pairs.filter(([one, other]) => together(one, other));

const nothing: PairContext = { palette: { colours: [] }, pairings: [], pairWords: [], wornTogether: [] };
const kindOf = ([one, other]: readonly [number, number], context = nothing) =>
	supportOf(
		aGarment({ id: 'shirt', lab: colours[one]!.lab }),
		aGarment({ id: 'skirt', kind: 'skirt', lab: colours[other]!.lab }),
		context,
	).kind;

/**
 * Harmony of two colours after Ou and Luo (2006), Color Res. Appl. 31(3), 191-204: equations and ten worked examples in
 * fixtures/reference/ou-luo-harmony.md. Only here, to show what it would have said; the program holds no harmony model.
 */
function harmony(one: Lab65, other: Lab65): number {
	const radians = (degrees: number) => (degrees * Math.PI) / 180;
	const dC = chroma(one) - chroma(other);
	const dHSquared = Math.max(0, (one[1] - other[1]) ** 2 + (one[2] - other[2]) ** 2 - dC ** 2);
	const chromatic = 0.04 + 0.53 * Math.tanh(0.8 - 0.045 * Math.sqrt(dHSquared + (dC / 1.46) ** 2));
	const lightness =
		0.28 +
		0.54 * Math.tanh(-3.88 + 0.029 * (one[0] + other[0])) +
		0.14 +
		0.15 * Math.tanh(-2 + 0.2 * Math.abs(one[0] - other[0]));
	const hue = (lab: Lab65) => {
		const h = hueDegrees(lab);
		const effect = 0.5 + 0.5 * Math.tanh(-2 + 0.5 * chroma(lab));
		const scale = -0.08 - 0.14 * Math.sin(radians(h + 50)) - 0.07 * Math.sin(radians(2 * h + 90));
		const yellow = ((0.22 * lab[0] - 12.8) / 10) * Math.exp((90 - h) / 10 - Math.exp((90 - h) / 10));
		return effect * (scale + yellow);
	};
	return chromatic + lightness + hue(one) + hue(other);
}

/** Chance that a number of `one` is above one of `other`, ties half: 0.5 = the two cannot be told apart. */
function areaUnderCurve(one: readonly number[], other: readonly number[]): number {
	const wins = one.reduce((sum, a) => sum + other.reduce((count, b) => count + (a > b ? 1 : a === b ? 0.5 : 0), 0), 0);
	return wins / (one.length * other.length);
}

describe('published colour combinations', () => {
	it('are the 348 of the dictionary', () => {
		expect(new Set(dictionary.flatMap(({ combinations }) => combinations)).size).toBe(348);
		expect(published.length).toBeGreaterThan(500);
	});

	it('are never called a no, and neither are the pairs that the dictionary does not hold', () => {
		expect(pairs.map((pair) => kindOf(pair)).filter((kind) => kind === 'no')).toEqual([]);
	});

	it('are not told from other pairs by any rule of ours: each kind of support is as frequent among both, within 5 points', () => {
		const others = pairs.filter(([one, other]) => !together(one, other));
		const share = (list: typeof pairs, kind: string) =>
			list.filter((pair) => kindOf(pair) === kind).length / list.length;
		for (const kind of ['base', 'echo', 'unproven'])
			expect(Math.abs(share(published, kind) - share(others, kind))).toBeLessThan(0.05);
	});

	it('all count as soon as the user approves them, and none does once refused', () => {
		const said = (word: 'approved' | 'refused'): PairContext => ({
			...nothing,
			pairWords: [{ garmentA: 'shirt', garmentB: 'skirt', word }],
		});
		expect(new Set(published.map((pair) => kindOf(pair, said('approved'))))).toEqual(new Set(['approved']));
		expect(new Set(published.map((pair) => kindOf(pair, said('refused'))))).toEqual(new Set(['no']));
	});
});

describe('a published model of harmony', () => {
	// Ten examples computed apart from this program (fixtures/reference/ou-luo-harmony.md).
	it.each([
		[[20, 5, -30], [95, 0, 2], 0.2583],
		[[20, 5, -30], [62, 12, 30], -0.4818],
		[[42, -8, 28], [45, 38, 40], -0.9332],
		[[15, 0, 0], [15, 0, 0], 0.1207],
		[[50, 0, 0], [80, 0, 0], 0.8934],
		[[45, 65, 40], [50, -45, 25], -0.9384],
		[[85, 2, 80], [35, 40, -45], -0.0889],
		[[82, -6, -16], [82, 18, 4], 0.2362],
		[[40, 10, -45], [60, -2, -12], 0.1735],
		[[45, -28, -10], [68, 45, 30], -0.4583],
	] as [Lab65, Lab65, number][])('is written down rightly here: %j with %j', (one, other, expected) => {
		expect(harmony(one, other)).toBeCloseTo(expected, 3);
	});

	it('does not tell published pairs from shuffled ones, which is why no such model decides anything in this program', () => {
		const random = seededRandom('shuffled');
		const shuffled = published.map(([one]) => [one, published[Math.floor(random() * published.length)]![1]] as const);
		const scores = (list: readonly (readonly [number, number])[]) =>
			list.map(([one, other]) => harmony(colours[one]!.lab, colours[other]!.lab));
		const told = areaUnderCurve(scores(published), scores(shuffled));
		expect(told).toBeGreaterThan(0.42);
		expect(told).toBeLessThan(0.58);
	});
});
