import { outfitCeiling } from '../pairs/outfits.ts';
import { bySlot, SLOTS } from '../words/slot.ts';
import { lineUpBound } from './line-up-bound.ts';
import type { LineUpChoices, LineUpProblem } from './line-up-choices.ts';

/** Sets up a choice: places, ceiling and bound. An empty wardrobe gives a problem without places, bound 0. */
export function lineUpProblemOf({ quotas, ...given }: LineUpChoices): LineUpProblem {
	const { slots, together, fixed } = given;
	const count = slots.length;
	const isFixed = new Set(fixed);
	const choices = bySlot((slot) => slots.flatMap((one, index) => (one === slot && !isFixed.has(index) ? [index] : [])));
	const kept = bySlot((slot) => fixed.filter((member) => slots[member] === slot).length);
	const asked = bySlot((slot) => Math.max(kept[slot], quotas[slot]));
	const problem = {
		...given,
		table: { slots, goes: (one: number, other: number) => together[one * count + other] === 1 },
		places: bySlot((slot) => Math.min(asked[slot], choices[slot].length + kept[slot])),
		choices,
		size: SLOTS.reduce((sum, slot) => sum + asked[slot], 0),
		ceiling: outfitCeiling(asked),
	};
	return { ...problem, bound: lineUpBound(problem) };
}
