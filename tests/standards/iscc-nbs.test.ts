import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { ISCC_NBS } from '../../src/colour/iscc-nbs.ts';
import { type Lab65, labFromHex } from '../../src/colour/lab65.ts';
import { colourName } from '../../src/colour/name.ts';
import { numbersOf, referenceRows } from '../support/reference.ts';

/** Outside their own Munsell block, checked against the published blocks (fixtures/reference/README.md). */
const UNRELIABLE = [1, 25, 28, 29, 64, 66, 123, 124, 133, 139, 142, 158, 160, 161, 167, 169, 170, 176, 179, 246];

// Kelly and Judd (1976), NBS Special Publication 440: 267 names.
const rows = referenceRows('iscc-nbs.csv');

describe('systematic colour names', () => {
	it('are the 267 of the standard, with their centroids', () => {
		expect(ISCC_NBS.map(([name, hex]) => `${name} ${hex}`)).toEqual(rows.map(({ name, hex }) => `${name} ${hex}`));
		for (const row of rows) {
			const stated = numbersOf(row, 'L65', 'a65', 'b65') as unknown as Lab65;
			expect(deltaE2000(labFromHex(row.hex!)!, stated)).toBeLessThan(0.02);
		}
	});

	it('give every reliable centroid its own name', () => {
		const wrong = rows
			.filter(({ number }) => !UNRELIABLE.includes(Number(number)))
			.filter(({ name, hex }) => colourName(labFromHex(hex!)!) !== name);
		expect(wrong).toEqual([]);
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
