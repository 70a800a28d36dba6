import { SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';
import { LEAST_WORTH, scoreOf } from './line-up-worth.ts';

/** A problem before its bound is known. */
type Unbounded = Omit<LineUpProblem, 'bound'>;

/** Sum of the values of the fixed members and of the best others, where they are worth more than 0, that the slot still has places for. */
function bestOf({ fixed, choices, places, slots }: Unbounded, slot: Slot, value: (member: number) => number): number {
	const kept = fixed.filter((member) => slots[member] === slot).map(value);
	const others = choices[slot].map(value).sort((a, b) => b - a);
	return [...kept, ...others.slice(0, Math.max(0, places[slot] - kept.length)).filter((one) => one > 0)].reduce(
		(sum, one) => sum + one,
		0,
	);
}

/** The most pairs that a member can be part of, with the best of each slot's places. */
function mostPairsOf({ slots, together, places, fixed, choices }: Unbounded, member: number): number {
	const count = slots.length;
	return SLOTS.reduce((sum, slot) => {
		const going = [...choices[slot], ...fixed.filter((one) => slots[one] === slot)].filter(
			(other) => together[member * count + other] === 1,
		).length;
		return sum + Math.min(going, places[slot]);
	}, 0);
}

/**
 * An objective that no set of the problem can exceed: what everything that may be chosen would give to pictures, days and palette at once, and, slot by slot, the best of what each piece
 * gives by itself to fit, love and pairs. Often some way above the best set.
 */
export function lineUpBound(problem: Unbounded): number {
	const { weights, size, mostPairs, fit, loved, fixed, choices } = problem;
	const everything = [...fixed, ...SLOTS.flatMap((slot) => choices[slot])];
	const { parts } = scoreOf({ ...problem, bound: 0 }, everything);
	const shared = weights.pictures * parts.pictures + weights.enough * parts.enough + weights.palette * parts.palette;
	// What a piece may add to the shared parts can pay for its place, so places cost nothing here beyond what the fixed ones cost.
	const own = (member: number) =>
		(size > 0 ? (weights.fit * fit[member]! + weights.loved * loved[member]!) / size : 0) +
		(mostPairs > 0 ? (weights.outfits * mostPairsOf(problem, member)) / (2 * mostPairs) : 0);
	return shared + SLOTS.reduce((sum, slot) => sum + bestOf(problem, slot, own), 0) - LEAST_WORTH * fixed.length;
}
