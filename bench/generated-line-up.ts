import type { LineUpProblem } from '../src/wardrobe/line-up/line-up-choices.ts';
import { lineUpProblemOf } from '../src/wardrobe/line-up/line-up-problem.ts';
import type { Quotas } from '../src/wardrobe/words/season.ts';
import { seededRandom } from '../src/wardrobe/words/seeded-random.ts';
import { SLOTS, type Slot } from '../src/wardrobe/words/slot.ts';

/** Quotas of a set of 33. */
const QUOTAS: Quotas = { top: 10, outer: 4, bottom: 6, full: 3, legwear: 3, shoes: 4, accessory: 3 };

/** How often each slot occurs in a wardrobe. */
const SHARES: Readonly<Record<Slot, number>> = {
	top: 0.34,
	outer: 0.1,
	bottom: 0.18,
	full: 0.1,
	legwear: 0.06,
	shoes: 0.14,
	accessory: 0.08,
};

function aSlot(random: () => number): Slot {
	let left = random();
	for (const slot of SLOTS) {
		left -= SHARES[slot];
		if (left < 0) return slot;
	}
	return 'top';
}

/**
 * A line-up to choose from a wardrobe that is hard to choose from: no neutrals that go with everything, about `density` (0..0.5) of the pairs supported.
 * Half of what joins two pieces is taste (they lie near each other on a ring of colours), half is chance, as approvals are.
 */
export function generatedLineUp(count: number, density: number, seed: string, quotas: Quotas = QUOTAS): LineUpProblem {
	const random = seededRandom(seed);
	const slots = Array.from({ length: count }, () => aSlot(random));
	const places = slots.map(() => random());
	const together = new Uint8Array(count * count);
	for (let one = 0; one < count; one++) {
		for (let other = one + 1; other < count; other++) {
			const apart = Math.abs(places[one]! - places[other]!);
			const near = 2 * Math.min(apart, 1 - apart);
			if (near + random() >= Math.sqrt(2 * density)) continue;
			together[one * count + other] = 1;
			together[other * count + one] = 1;
		}
	}
	return lineUpProblemOf({
		slots,
		together,
		fit: slots.map(() => random()),
		loved: slots.map(() => random()),
		weights: { outfits: 1, fit: 0.3, loved: 0.15 },
		quotas,
		fixed: [],
		warmOuter: new Set(),
	});
}
