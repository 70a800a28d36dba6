import type { LineUpProblem } from '../../src/wardrobe/line-up/line-up-choices.ts';
import { scoreOf } from '../../src/wardrobe/line-up/line-up-search.ts';
import { SLOTS } from '../../src/wardrobe/words/slot.ts';

/** All ways to choose `count` of `items`. */
function choose(items: readonly number[], count: number): number[][] {
	if (count === 0) return [[]];
	return items.flatMap((item, at) => choose(items.slice(at + 1), count - 1).map((rest) => [item, ...rest]));
}

/** The highest objective of all sets that the problem allows, by trying each: for small wardrobes only. */
export function bestByTryingAll(problem: LineUpProblem): number {
	const { slots, fixed, choices, places, warmOuter } = problem;
	const openOuter = places.outer - fixed.filter((member) => slots[member] === 'outer').length;
	const needsWarm = warmOuter.size > 0 && openOuter > 0;
	let sets: number[][] = [[]];
	for (const slot of SLOTS) {
		const kept = fixed.filter((member) => slots[member] === slot);
		const fillings = choose(choices[slot], places[slot] - kept.length);
		sets = sets.flatMap((set) => fillings.map((filling) => [...set, ...kept, ...filling]));
	}
	return sets
		.filter((set) => !needsWarm || set.some((member) => warmOuter.has(member)))
		.reduce((best, set) => Math.max(best, scoreOf(problem, set).objective), Number.NEGATIVE_INFINITY);
}
