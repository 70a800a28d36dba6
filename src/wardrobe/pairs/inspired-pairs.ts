import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { Pairing } from './pairings.ts';

/** A garment's colour is the one a picture wears up to this distance (CIEDE2000): what counts as a palette colour's support too. */
const INSPIRED_WITHIN = 10;

/** Which pairs of garments the inspirations show: same two slots, both colours close. */
export type InspiredPairs = {
	/** Calls `visit` with every such pair; again for each pairing that shows it. */
	readonly each: (visit: (one: number, other: number) => void) => void;
	/** The pairing of most pictures that shows the pair, or `null`. */
	readonly best: (one: number, other: number) => Pairing | null;
};

/**
 * Finds the pairs that the pairings show. `mains[i]` is the garment's main colour, or `null`, which no picture shows.
 */
export function inspiredPairs(
	slots: readonly Slot[],
	mains: readonly (Lab65 | null)[],
	pairings: readonly Pairing[],
): InspiredPairs {
	const coloured = new Map<Slot, { readonly garment: number; readonly main: Lab65 }[]>(SLOTS.map((slot) => [slot, []]));
	for (const [garment, main] of mains.entries()) if (main) coloured.get(slots[garment]!)!.push({ garment, main });
	const wearing = (slot: Slot, lab: Lab65): ReadonlySet<number> =>
		new Set(
			coloured
				.get(slot)!
				.filter(({ main }) => liesWithin(main, lab, INSPIRED_WITHIN))
				.map(({ garment }) => garment),
		);
	const shown = pairings.map((pairing) => ({
		pairing,
		asA: wearing(pairing.slotA, pairing.labA),
		asB: wearing(pairing.slotB, pairing.labB),
	}));
	return {
		each: (visit) => {
			for (const { asA, asB } of shown) for (const one of asA) for (const other of asB) visit(one, other);
		},
		best: (one, other) =>
			// Pairings come with those of most pictures first.
			shown.find(({ asA, asB }) => (asA.has(one) && asB.has(other)) || (asA.has(other) && asB.has(one)))?.pairing ??
			null,
	};
}
