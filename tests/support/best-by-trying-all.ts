import type { LineUpProblem } from '../../src/wardrobe/line-up/line-up-choices.ts';
import { scoreOf } from '../../src/wardrobe/line-up/line-up-worth.ts';
import { SLOTS } from '../../src/wardrobe/words/slot.ts';

/** All ways to choose up to `most` of `items`. */
function chooseUpTo(items: readonly number[], most: number): number[][] {
	const [first, ...rest] = items;
	if (first === undefined || most === 0) return [[]];
	return [...chooseUpTo(rest, most), ...chooseUpTo(rest, most - 1).map((others) => [first, ...others])];
}

/** The highest objective of all sets that the problem allows, by trying each: for small wardrobes only. */
export function bestByTryingAll(problem: LineUpProblem): number {
	const { slots, fixed, choices, places, warmOuter } = problem;
	const keptOuter = fixed.filter((member) => slots[member] === 'outer');
	const canHaveWarm =
		keptOuter.some((member) => warmOuter.has(member)) ||
		(keptOuter.length < places.outer && choices.outer.some((member) => warmOuter.has(member)));
	let sets: number[][] = [[...fixed]];
	for (const slot of SLOTS) {
		const kept = fixed.filter((member) => slots[member] === slot).length;
		const fillings = chooseUpTo(choices[slot], places[slot] - kept);
		sets = sets.flatMap((set) => fillings.map((filling) => [...set, ...filling]));
	}
	return sets
		.filter((set) => !canHaveWarm || set.some((member) => warmOuter.has(member)))
		.reduce((best, set) => Math.max(best, scoreOf(problem, set).objective), Number.NEGATIVE_INFINITY);
}
