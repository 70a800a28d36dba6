import type { PartOffer } from '../src/wardrobe/days/enough.ts';
import type { LineUpProblem } from '../src/wardrobe/line-up/line-up-choices.ts';
import { lineUpProblemOf } from '../src/wardrobe/line-up/line-up-problem.ts';
import { USUAL_WEIGHTS } from '../src/wardrobe/words/line-up-weights.ts';
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

/** Pictures of the board. */
const PICTURES = 12;

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
	const COLOURS = 6;
	const holds = new Float64Array(count * COLOURS);
	for (let piece = 0; piece < count; piece++)
		if (random() < 0.7) holds[piece * COLOURS + Math.floor(random() * COLOURS)] = 0.5 + random();
	const inSlot = (slot: Slot) => slots.flatMap((one, index) => (one === slot ? [index] : []));
	const answering = (slot: Slot) => inSlot(slot).filter(() => random() < 0.3);
	const pictures = Array.from({ length: PICTURES }, (_, index) =>
		(index % 3 === 0 ? (['full', 'shoes'] as const) : (['top', 'bottom', 'shoes'] as const)).map(answering),
	).filter((pieces) => pieces.every((pieceAnswers) => pieceAnswers.length > 0));
	return lineUpProblemOf({
		slots,
		together,
		fit: slots.map(() => random()),
		loved: slots.map(() => random()),
		// Every third piece looks like the one before it of its slot.
		look: slots.map((slot, index) => {
			const before = slots.slice(0, index).lastIndexOf(slot);
			return index % 3 === 0 && before >= 0 ? before : index;
		}),
		offers: slots.map((slot): PartOffer | null => {
			const serves = 1 + Math.floor(random() * 3);
			return slot === 'top' || slot === 'bottom' || slot === 'full'
				? { part: slot, serves, days: slot === 'top' ? 1 : slot === 'full' ? 2 : 4 }
				: null;
		}),
		askedDays: [5, 2],
		colourWeights: [0.3, 0.25, 0.2, 0.15, 0.06, 0.04],
		holds,
		pictures,
		weights: USUAL_WEIGHTS,
		quotas,
		fixed: [],
		settled: [],
		warmOuter: new Set(),
	});
}
