import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { pairLightnessWeight } from '../words/photo-distance.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { Pairing } from './pairings.ts';

/** A garment's colour is the one a picture wears up to this distance (CIEDE2000): what counts as a palette colour's support too. */
const INSPIRED_WITHIN = 10;

/** Which pairs of garments the inspirations show: same two slots, both colours close. */
export type InspiredPairs = {
	readonly has: (one: number, other: number) => boolean;
	/** Calls `visit` with every such pair; again for each pairing that shows it. */
	readonly each: (visit: (one: number, other: number) => void) => void;
	/** The pairing of most pictures that shows the pair, or `null`. */
	readonly best: (one: number, other: number) => Pairing | null;
};

/** A bit for each pairing, by garment: whether the garment is what the pairing shows on that side. */
function bitsBySide(garments: number, wearing: readonly (readonly number[])[], words: number): Uint32Array {
	const bits = new Uint32Array(garments * words);
	for (const [pairing, worn] of wearing.entries())
		for (const garment of worn) bits[garment * words + (pairing >> 5)]! |= 1 << (pairing & 31);
	return bits;
}

/** Garments as pictures wear them, in one order: where each is worn, its main colour (`null` is shown by no picture), and whether nothing tells its light. */
export type WornColours = {
	readonly slots: readonly Slot[];
	readonly mains: readonly (Lab65 | null)[];
	readonly untold: readonly boolean[];
};

/** Finds the pairs that the pairings show. */
export function inspiredPairs({ slots, mains, untold }: WornColours, pairings: readonly Pairing[]): InspiredPairs {
	const coloured = new Map<Slot, { readonly garment: number; readonly main: Lab65; readonly weight: number }[]>(
		SLOTS.map((slot) => [slot, []]),
	);
	for (const [garment, main] of mains.entries())
		if (main) coloured.get(slots[garment]!)!.push({ garment, main, weight: pairLightnessWeight(untold[garment]) });
	const wearing = (slot: Slot, lab: Lab65): number[] =>
		coloured
			.get(slot)!
			.filter(({ main, weight }) => liesWithin(main, lab, INSPIRED_WITHIN, weight))
			.map(({ garment }) => garment);
	const sideA = pairings.map(({ slotA, labA }) => wearing(slotA, labA));
	const sideB = pairings.map(({ slotB, labB }) => wearing(slotB, labB));
	const words = Math.ceil(pairings.length / 32);
	const asA = bitsBySide(slots.length, sideA, words);
	const asB = bitsBySide(slots.length, sideB, words);
	const shownIn = (one: number, other: number, word: number): number =>
		(asA[one * words + word]! & asB[other * words + word]!) | (asB[one * words + word]! & asA[other * words + word]!);
	return {
		has: (one, other) => {
			for (let word = 0; word < words; word++) if (shownIn(one, other, word) !== 0) return true;
			return false;
		},
		each: (visit) => {
			for (const [pairing, worn] of sideA.entries())
				for (const one of worn) for (const other of sideB[pairing]!) visit(one, other);
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
