import { areComplementary } from '../words/complementary-slots.ts';
import type { Quotas } from '../words/season.ts';
import { bySlot, SLOTS, type Slot } from '../words/slot.ts';
import { slotSize } from '../words/slot-size.ts';
import { lineUpBound } from './line-up-bound.ts';
import type { LineUpChoices, LineUpProblem } from './line-up-choices.ts';

/** Pairs that pieces so many of each slot could be worn in, and no fewer than 1. */
function pairsOf(counts: Quotas): number {
	const pairs = SLOTS.flatMap((one, index) =>
		SLOTS.slice(index + 1).map((other) => (areComplementary(one, other) ? counts[one] * counts[other] : 0)),
	).reduce((sum, count) => sum + count, 0);
	// A jumper over a shirt is a pair too; at most as many as there are tops.
	return Math.max(1, pairs + counts.top);
}

/**
 * Sets up a choice: who is in anyhow, who may be chosen, places and bound. Favourites, basics and much-worn pieces are in anyhow where their slot has places for all of them; where it has
 * not, only they are chosen from. An empty wardrobe gives a problem without choices, bound 0.
 */
export function lineUpProblemOf({ quotas, settled, ...given }: LineUpChoices): LineUpProblem {
	const { slots } = given;
	const kept = bySlot((slot) => given.fixed.filter((member) => slots[member] === slot));
	const wanted = new Set(settled.filter((member) => !given.fixed.includes(member)));
	const places = bySlot((slot) => Math.max(kept[slot].length, quotas[slot]));
	const open = bySlot((slot) => places[slot] - kept[slot].length);
	const wantedIn = bySlot((slot) => [...wanted].filter((member) => slots[member] === slot));
	const fitsAll = (slot: Slot) => wantedIn[slot].length <= open[slot];
	const fixed = [...given.fixed, ...SLOTS.flatMap((slot) => (fitsAll(slot) ? wantedIn[slot] : []))].sort(
		(a, b) => a - b,
	);
	const isFixed = new Set(fixed);
	const choices = bySlot((slot) =>
		slots.flatMap((one, index) =>
			one === slot && !isFixed.has(index) && (fitsAll(slot) || wanted.has(index)) ? [index] : [],
		),
	);
	const cloth = SLOTS.reduce((sum, slot) => sum + places[slot] * slotSize(slot), 0);
	const problem = {
		...given,
		fixed,
		places,
		choices,
		size: SLOTS.reduce((sum, slot) => sum + places[slot], 0),
		mostPairs: pairsOf(places),
		clothAsked: given.colourWeights.map((weight) => Math.max(1e-9, weight * cloth)),
	};
	return { ...problem, bound: lineUpBound(problem) };
}
