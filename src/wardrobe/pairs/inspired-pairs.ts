import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { Slot } from '../words/slot.ts';
import type { Pairing } from './pairings.ts';

/** A garment's colour is the one a picture wears up to this distance (CIEDE2000): what counts as a palette colour's support too. */
const INSPIRED_WITHIN = 10;

/** Which pairs of garments the inspirations show: same two slots, both colours close. */
export type InspiredPairs = {
	readonly has: (one: number, other: number) => boolean;
	/** The pairing of most pictures that shows the pair, or `null`. */
	readonly best: (one: number, other: number) => Pairing | null;
};

/**
 * Finds the pairs that the pairings show. Each garment gets one bit per pairing for either side, so that a pair costs a few bit operations.
 * `mains[i]` is the garment's main colour, or `null`, which no picture shows.
 */
export function inspiredPairs(
	slots: readonly Slot[],
	mains: readonly (Lab65 | null)[],
	pairings: readonly Pairing[],
): InspiredPairs {
	const words = Math.ceil(pairings.length / 32);
	const asA = new Uint32Array(slots.length * words);
	const asB = new Uint32Array(slots.length * words);
	for (const [garment, main] of mains.entries()) {
		if (!main) continue;
		for (const [index, { slotA, labA, slotB, labB }] of pairings.entries()) {
			const at = garment * words + (index >> 5);
			if (slotA === slots[garment] && liesWithin(main, labA, INSPIRED_WITHIN)) asA[at]! |= 1 << (index & 31);
			if (slotB === slots[garment] && liesWithin(main, labB, INSPIRED_WITHIN)) asB[at]! |= 1 << (index & 31);
		}
	}
	const shownIn = (one: number, other: number, word: number): number =>
		(asA[one * words + word]! & asB[other * words + word]!) | (asB[one * words + word]! & asA[other * words + word]!);
	return {
		has: (one, other) => {
			for (let word = 0; word < words; word++) if (shownIn(one, other, word) !== 0) return true;
			return false;
		},
		best: (one, other) => {
			// Pairings come with those of most pictures first, so the first bit is the best.
			for (let word = 0; word < words; word++) {
				const bits = shownIn(one, other, word);
				if (bits !== 0) return pairings[word * 32 + (31 - Math.clz32(bits & -bits))]!;
			}
			return null;
		},
	};
}
