import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { ISCC_NBS } from '../../src/colour/iscc-nbs.ts';
import { type Lab65, labFromHex } from '../../src/colour/lab65.ts';
import { colourName } from '../../src/colour/name.ts';
import { colourWordRows } from '../support/colour-words.ts';
import { numbersOf, referenceRows } from '../support/reference.ts';

// Kelly and Judd (1976), NBS Special Publication 440: 267 names.
const rows = referenceRows('iscc-nbs.csv');

const levelOne = new Map(rows.map(({ name, level1 }) => [name, level1!]));
const groupOf = (lab: Lab65): string => levelOne.get(colourName(lab))!;
/** Basic terms that a group of the standard's first level covers where it is none itself. */
const COVERS: Readonly<Record<string, readonly string[]>> = {
	gray: ['grey'],
	olive: ['green', 'brown', 'yellow'],
	'yellow green': ['green', 'yellow'],
};
const agrees = (group: string, term: string): boolean => group === term || (COVERS[group]?.includes(term) ?? false);

describe('systematic colour names', () => {
	it('are the 267 of the standard, with their centroids', () => {
		expect(ISCC_NBS.map(([name, hex]) => `${name} ${hex}`)).toEqual(rows.map(({ name, hex }) => `${name} ${hex}`));
		for (const row of rows) {
			const stated = numbersOf(row, 'L65', 'a65', 'b65') as unknown as Lab65;
			expect(deltaE2000(labFromHex(row.hex!)!, stated)).toBeLessThan(0.02);
		}
	});

	it('give at least 247 of the centroids their own name: all but the 20 that lie outside their published blocks', () => {
		// Which 20: fixtures/reference/README.md, worked out from the blocks apart from this program.
		const own = rows.filter(({ name, hex }) => colourName(labFromHex(hex!)!) === name);
		expect(own.length).toBeGreaterThanOrEqual(247);
	});

	it('leave no centroid but one in a wrong group of the first level', () => {
		const wrong = rows.filter(({ hex, level1 }) => groupOf(labFromHex(hex!)!) !== level1);
		// Brownish gray and dark reddish gray lie within a CIEDE2000 of 1 in sRGB.
		expect(wrong.map(({ name }) => name)).toEqual(['brownish gray']);
	});

	// Berlin and Kay (1969), Basic Color Terms; which Munsell chips: from memory. See fixtures/colour-words/README.md.
	it('file the chips at and beside the best examples of the eleven basic terms under these terms, but for one beside red', () => {
		const chips = colourWordRows('basic-terms.csv');
		expect(chips.length).toBe(33);
		const wrong = chips.filter((row) => !agrees(groupOf(numbersOf(row, 'L', 'a', 'b') as unknown as Lab65), row.term!));
		expect(wrong.map(({ munsell }) => munsell)).toEqual(['7.5R 4/14']);
	});

	// The xkcd colour survey, CC0; see fixtures/colour-words/README.md.
	it('agree with the basic terms that people typed for 70 % of the centroids of a survey, and by chance for under 25 %', () => {
		const survey = colourWordRows('xkcd.csv').map(({ hex, terms }) => ({
			group: groupOf(labFromHex(hex!)!),
			terms: terms!.split(' '),
		}));
		const share = (shift: number) =>
			survey.filter(({ group }, at) => survey[(at + shift) % survey.length]!.terms.some((term) => agrees(group, term)))
				.length / survey.length;
		expect(survey.length).toBeGreaterThan(700);
		expect(share(0)).toBeGreaterThanOrEqual(0.7);
		expect(share(100)).toBeLessThan(0.25);
	});

	it('do not take an unreliable centroid as exact: where a reliable one is almost as near, that one names the colour', () => {
		// Number 176, vivid blue, is cut by sRGB to a greenish colour that the standard calls brilliant greenish blue.
		expect(colourName(labFromHex('#00a1c2')!)).toBe('brilliant greenish blue');
		expect(colourName(labFromHex('#5b504f')!)).toBe('dark reddish gray');
		// Number 139, vivid green, stands clear of its neighbours.
		expect(colourName(labFromHex('#008856')!)).toBe('vivid green');
	});

	it.each([
		['navy trousers', [18, 4, -22], /blue/],
		['an oat jumper', [84, 1, 11], /yellowish (white|gray)|yellow/],
		['a rust scarf', [45, 38, 40], /brown|reddish orange/],
		['an olive coat', [42, -6, 24], /olive/],
	] as const)('call %s something a person would', (_, lab, expected) => expect(colourName(lab)).toMatch(expected));
});
