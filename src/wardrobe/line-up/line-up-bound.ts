import { SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';

/** A problem before its bound is known. */
type Unbounded = Omit<LineUpProblem, 'bound'>;

/** Sum of the values of the fixed members and of the best others that the slot still has places for. */
function bestOf({ fixed, choices, places, slots }: Unbounded, slot: Slot, value: (member: number) => number): number {
	const kept = fixed.filter((member) => slots[member] === slot).map(value);
	const others = choices[slot].map(value).sort((a, b) => b - a);
	return [...kept, ...others.slice(0, Math.max(0, places[slot] - kept.length))].reduce((sum, one) => sum + one, 0);
}

/** Outfits that a body can make at most: with as many of the shoes and outer pieces that go with all its parts as there are places. */
function outfitsOfBody({ slots, together, places, fixed, choices }: Unbounded) {
	const count = slots.length;
	const allOf = (slot: Slot) => [...choices[slot], ...fixed.filter((member) => slots[member] === slot)];
	const shoes = allOf('shoes');
	const outer = allOf('outer');
	const going = (body: readonly number[], members: readonly number[], most: number) => {
		let found = 0;
		for (const member of members)
			if (body.every((part) => together[part * count + member] === 1) && ++found >= most) return most;
		return found;
	};
	return (body: readonly number[]) =>
		(places.shoes === 0 ? 1 : going(body, shoes, places.shoes)) * (1 + going(body, outer, places.outer));
}

/**
 * An objective that no set of the problem can exceed. Each top counts with the bottoms it could make most outfits with, as if the others did
 * not want different ones (and the same the other way round; the lower of the two holds), and every slot has its best fit and best loved.
 * Never above the quota ceiling, and equal to it where everything goes together; otherwise some way above the best set.
 */
export function lineUpBound(problem: Unbounded): number {
	const { slots, together, fixed, choices, fit, loved, weights, size, ceiling } = problem;
	const count = slots.length;
	const likedShare = (member: number) =>
		size > 0 ? (weights.fit * fit[member]! + weights.loved * loved[member]!) / size : 0;
	const share = (outfits: number) => (ceiling > 0 ? (weights.outfits * outfits) / ceiling : 0);
	const outfitsOf = outfitsOfBody(problem);
	const all = (slot: Slot) => [...choices[slot], ...fixed.filter((member) => slots[member] === slot)];
	const pairs = new Map<number, number>();
	for (const top of all('top')) {
		for (const bottom of all('bottom'))
			if (together[top * count + bottom]) pairs.set(top * count + bottom, outfitsOf([top, bottom]));
	}
	const through = (slot: 'top' | 'bottom') => {
		const other = slot === 'top' ? 'bottom' : 'top';
		return bestOf(problem, slot, (member) => {
			const outfits = bestOf(
				problem,
				other,
				(with_) => pairs.get(slot === 'top' ? member * count + with_ : with_ * count + member) ?? 0,
			);
			return share(outfits) + likedShare(member);
		});
	};
	const liked = (slot: Slot) => bestOf(problem, slot, likedShare);
	const bodies = Math.min(through('top') + liked('bottom'), through('bottom') + liked('top'));
	const wholes = bestOf(problem, 'full', (member) => share(outfitsOf([member])) + likedShare(member));
	const rest = SLOTS.filter((slot) => slot !== 'top' && slot !== 'bottom' && slot !== 'full');
	return bodies + wholes + rest.reduce((sum, slot) => sum + liked(slot), 0);
}
