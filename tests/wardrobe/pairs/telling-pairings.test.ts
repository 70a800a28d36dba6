import { describe, expect, it } from 'vitest';
import type { Pairing } from '../../../src/wardrobe/pairs/pairings.ts';
import { tellingPairings } from '../../../src/wardrobe/pairs/telling-pairings.ts';
import { INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const BLACK = [12, 0, 0] as const;
const WHITE = [95, 0, 2] as const;
const pair = (labA: Pairing['labA'], labB: Pairing['labB'], photos: number): Pairing => ({
	slotA: 'top',
	labA,
	slotB: 'bottom',
	labB,
	kindA: null,
	kindB: null,
	photos,
});

describe('the pairings shown first', () => {
	it('never begin with a colour on itself, however often it is seen', () => {
		const black = pair(BLACK, BLACK, 9);
		expect(tellingPairings([black, pair(OAT, RUST, 1)]).at(-1)).toBe(black);
	});

	it('are those of more pictures, and at as many those of more colour', () => {
		const plain = pair(BLACK, WHITE, 2);
		const coloured = pair(RUST, INK, 2);
		const often = pair(BLACK, RUST, 6);
		expect(tellingPairings([plain, coloured, often])).toEqual([often, coloured, plain]);
	});
});
