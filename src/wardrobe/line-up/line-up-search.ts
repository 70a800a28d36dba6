import { countOutfits, outfitParts, outfitsThrough } from '../pairs/outfits.ts';
import { seededRandom } from '../words/seeded-random.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';

/** A set of members and what it is worth. */
export type ScoredSet = {
	readonly members: readonly number[];
	readonly outfits: number;
	/** Of the objective, 0..1 each, before their weights: a piece short of those asked for counts as 0. */
	readonly parts: { readonly outfits: number; readonly fit: number; readonly loved: number };
	readonly objective: number;
};

/** Measured: 12 starts can be 10 % short, 50 equal 300 in 17 of 18 wardrobes (the other 0.3 % lower). */
const STARTS = 50;
/** Rounds of refilling settle after 3 to 6; a safeguard against going round in circles. */
const MOST_ROUNDS = 30;

/** What a set of members is worth; every part is 0 for an empty set. */
export function scoreOf(
	{ table, fit, loved, weights, ceiling, size }: LineUpProblem,
	members: readonly number[],
): ScoredSet {
	const outfits = countOutfits(table, members);
	const mean = (values: readonly number[]) =>
		size > 0 ? members.reduce((sum, member) => sum + values[member]!, 0) / size : 0;
	const parts = { outfits: ceiling > 0 ? outfits / ceiling : 0, fit: mean(fit), loved: mean(loved) };
	const objective = weights.outfits * parts.outfits + weights.fit * parts.fit + weights.loved * parts.loved;
	return { members, outfits, parts, objective };
}

/** The members by slot while searching. */
type Chosen = Record<Slot, number[]>;

const flat = (chosen: Chosen): number[] => SLOTS.flatMap((slot) => chosen[slot]);

/**
 * The best filling of one slot while the others stay: exact, because no outfit wears two pieces of one slot, so each piece's worth
 * does not depend on the others of its slot. A warm outer piece is kept where one is needed.
 */
function refill(problem: LineUpProblem, chosen: Chosen, slot: Slot): number[] {
	const { table, fit, loved, weights, ceiling, size, fixed, choices, places, warmOuter } = problem;
	const kept = fixed.filter((member) => table.slots[member] === slot);
	const open = places[slot] - kept.length;
	if (open <= 0) return kept;
	const others = outfitParts(table, flat({ ...chosen, [slot]: [] }));
	const worth = (member: number) =>
		(ceiling > 0 ? (weights.outfits * outfitsThrough(table, others, member)) / ceiling : 0) +
		(weights.fit * fit[member]! + weights.loved * loved[member]!) / size;
	const ranked = choices[slot]
		.map((member) => ({ member, worth: worth(member) }))
		.sort((a, b) => b.worth - a.worth || a.member - b.member);
	const best = ranked.slice(0, open).map(({ member }) => member);
	const needsWarm =
		slot === 'outer' && warmOuter.size > 0 && ![...kept, ...best].some((member) => warmOuter.has(member));
	if (needsWarm) {
		const warm = ranked.find(({ member }) => warmOuter.has(member));
		if (warm) best[best.length - 1] = warm.member;
	}
	return [...kept, ...best];
}

/** Refills slot after slot until nothing changes. */
function settle(problem: LineUpProblem, start: Chosen, order: readonly Slot[]): Chosen {
	let chosen = start;
	for (let round = 0; round < MOST_ROUNDS; round++) {
		let changed = false;
		for (const slot of order) {
			const next = refill(problem, chosen, slot);
			if (next.length !== chosen[slot].length || next.some((member) => !chosen[slot].includes(member))) {
				chosen = { ...chosen, [slot]: next };
				changed = true;
			}
		}
		if (!changed) break;
	}
	return chosen;
}

function shuffled<T>(items: readonly T[], random: () => number): T[] {
	const mixed = [...items];
	for (let i = mixed.length - 1; i > 0; i--) {
		const j = Math.floor(random() * (i + 1));
		[mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
	}
	return mixed;
}

/** A first set: the best by fit alone for start 0, else drawn by chance. */
function startingSet(problem: LineUpProblem, start: number, random: () => number): Chosen {
	const { fixed, choices, places, table, fit } = problem;
	return Object.fromEntries(
		SLOTS.map((slot) => {
			const kept = fixed.filter((member) => table.slots[member] === slot);
			const order =
				start === 0 ? [...choices[slot]].sort((a, b) => fit[b]! - fit[a]! || a - b) : shuffled(choices[slot], random);
			return [slot, [...kept, ...order.slice(0, Math.max(0, places[slot] - kept.length))]];
		}),
	) as Chosen;
}

/** Pieces of a slot that are swapped in; with more, 2,000 garments take half a minute and no bench wardrobe gets a better set. */
const MOST_SWAPPED = 40;

/** The pieces of a slot that go with most others: those that another filling around them could make most of. */
function mostSociable({ choices, slots, together }: LineUpProblem, slot: Slot): number[] {
	const count = slots.length;
	const partners = (member: number) =>
		together.subarray(member * count, (member + 1) * count).reduce((sum, goes) => sum + goes, 0);
	return choices[slot]
		.map((member) => ({ member, partners: partners(member) }))
		.sort((a, b) => b.partners - a.partners || a.member - b.member)
		.slice(0, MOST_SWAPPED)
		.map(({ member }) => member);
}

/**
 * Swaps across slots: one piece from outside comes in for the weakest of its slot, then all other slots refill around it.
 * Outfits are supermodular (a new top is worth more with the bottoms that suit it), which refilling one slot at a time cannot see.
 */
function swapAcross(problem: LineUpProblem, from: Chosen): Chosen {
	let best = from;
	let bestScore = scoreOf(problem, flat(from)).objective;
	for (const slot of SLOTS) {
		for (const member of mostSociable(problem, slot)) {
			if (best[slot].includes(member) || best[slot].length === 0) continue;
			const open = best[slot].filter((one) => !problem.fixed.includes(one));
			const weakest = open[open.length - 1];
			if (weakest === undefined) continue;
			const swapped = { ...best, [slot]: best[slot].map((one) => (one === weakest ? member : one)) };
			const around = settle(problem, swapped, [...SLOTS.filter((one) => one !== slot), slot]);
			const score = scoreOf(problem, flat(around)).objective;
			if (score > bestScore + 1e-12) {
				best = around;
				bestScore = score;
			}
		}
	}
	return best;
}

/** The best set that 50 seeded starts find, each settled, the best one improved by swaps across slots. Deterministic. */
export function bestSet(problem: LineUpProblem, starts = STARTS): ScoredSet {
	const random = seededRandom('line-up');
	let best: { chosen: Chosen; score: ScoredSet } | null = null;
	for (let start = 0; start < starts; start++) {
		const order = start === 0 ? SLOTS : shuffled(SLOTS, random);
		const chosen = settle(problem, startingSet(problem, start, random), order);
		const score = scoreOf(problem, flat(chosen));
		if (!best || score.objective > best.score.objective + 1e-12) best = { chosen, score };
		if (best.score.objective >= problem.bound - 1e-12) return best.score;
	}
	return scoreOf(problem, flat(swapAcross(problem, best!.chosen)));
}

/** The set that a single greedy pass chooses, for comparison. */
export function greedySet(problem: LineUpProblem): ScoredSet {
	let chosen = Object.fromEntries(
		SLOTS.map((slot) => [slot, problem.fixed.filter((member) => problem.table.slots[member] === slot)]),
	) as Chosen;
	for (const slot of SLOTS) chosen = { ...chosen, [slot]: refill(problem, chosen, slot) };
	return scoreOf(problem, flat(chosen));
}
