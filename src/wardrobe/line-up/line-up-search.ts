import { seededRandom } from '../words/seeded-random.ts';
import { bySlot, SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';
import { evaluatorOf, type Standing } from './line-up-evaluator.ts';
import { type ScoredSet, scoreOf } from './line-up-worth.ts';

/** First sets that are each improved until nothing is better. Measured: see `bench/line-up.ts`. */
const STARTS = 12;
/** Objectives this near are a tie. */
const TIE = 1e-9;
/** Pieces of a slot that are tried: those worth most by themselves; with all of 2,000 garments a search would take minutes. */
const MOST_TRIED = 60;

/** Whether one set is to be preferred: worth more, else leaving the smaller largest gap, else leaving less to buy, else by the order of the pieces. */
function isBetter(one: Standing, other: Standing): boolean {
	if (Math.abs(one.objective - other.objective) > TIE) return one.objective > other.objective;
	if (Math.abs(one.largestGap - other.largestGap) > TIE) return one.largestGap < other.largestGap;
	return one.pieces !== other.pieces ? one.pieces > other.pieces : one.places < other.places;
}

/** Who is tried in each slot: all, or where there are very many those that fit, are loved and go with most, and the best of the coats that are warm enough. */
function triedOf({
	choices,
	fit,
	loved,
	weights,
	together,
	slots,
	mostPairs,
	size,
	warmOuter,
}: LineUpProblem): Record<Slot, readonly number[]> {
	const count = slots.length;
	const own = (member: number) => {
		const pairs = together.subarray(member * count, (member + 1) * count).reduce((sum, one) => sum + one, 0);
		return (
			(weights.fit * fit[member]! + weights.loved * loved[member]!) / Math.max(1, size) +
			(weights.outfits * pairs) / Math.max(1, mostPairs)
		);
	};
	return Object.fromEntries(
		SLOTS.map((slot) => {
			if (choices[slot].length <= MOST_TRIED) return [slot, choices[slot]];
			const ranked = choices[slot]
				.map((member) => ({ member, worth: own(member) }))
				.sort((a, b) => b.worth - a.worth || a.member - b.member)
				.map(({ member }) => member);
			const warmest = ranked.filter((member) => warmOuter.has(member)).slice(0, 1);
			return [slot, [...new Set([...warmest, ...ranked])].slice(0, MOST_TRIED).sort((a, b) => a - b)];
		}),
	) as Record<Slot, readonly number[]>;
}

/** A search over the sets of a problem. */
type Search = {
	readonly problem: LineUpProblem;
	readonly tried: Readonly<Record<Slot, readonly number[]>>;
	readonly needsWarm: boolean;
	readonly evaluate: (members: readonly number[]) => Standing;
};

const countIn = ({ problem }: Search, members: readonly number[], slot: Slot): number =>
	members.filter((member) => problem.slots[member] === slot).length;

const isWarm = ({ problem, needsWarm }: Search, members: readonly number[]): boolean =>
	!needsWarm || members.some((member) => problem.warmOuter.has(member));

/** Improves the set in place until no step is better: a piece more, a piece less, one in another's place, tried in the order given. A warm coat is never given up where one is needed. */
function improve(search: Search, members: number[], order: Readonly<Record<Slot, readonly number[]>>): Standing {
	const { problem, evaluate } = search;
	const isFixed = new Set(problem.fixed);
	let best = { ...evaluate(members) };
	const keeps = (): boolean => {
		if (!isWarm(search, members)) return false;
		const standing = evaluate(members);
		if (!isBetter(standing, best)) return false;
		best = { ...standing };
		return true;
	};
	/** Whether a step around the piece is better: it comes in, alone or in the place of another of its slot. */
	const bringIn = (coming: number, slot: Slot): boolean => {
		if (countIn(search, members, slot) < problem.places[slot]) {
			members.push(coming);
			if (keeps()) return true;
			members.pop();
		}
		for (let at = 0; at < members.length; at++) {
			const going = members[at]!;
			if (problem.slots[going] !== slot || isFixed.has(going)) continue;
			members[at] = coming;
			if (keeps()) return true;
			members[at] = going;
		}
		return false;
	};
	const takeOut = (at: number): boolean => {
		const [going] = members.splice(at, 1);
		if (keeps()) return true;
		members.splice(at, 0, going!);
		return false;
	};
	for (let changed = true; changed; ) {
		changed = false;
		for (const slot of SLOTS)
			for (const coming of order[slot]) if (!members.includes(coming) && bringIn(coming, slot)) changed = true;
		for (let at = members.length - 1; at >= 0; at--) if (!isFixed.has(members[at]!) && takeOut(at)) changed = true;
	}
	return best;
}

/** The piece that is worth most on top of the others; null where no place is open or nothing is worth its place. */
function bestAddition(search: Search, members: number[]): number | null {
	const { problem, tried, evaluate } = search;
	let best = { ...evaluate(members) };
	let addition: number | null = null;
	for (const slot of SLOTS) {
		if (countIn(search, members, slot) >= problem.places[slot]) continue;
		for (const member of tried[slot]) {
			if (members.includes(member)) continue;
			members.push(member);
			const standing = evaluate(members);
			members.pop();
			if (!isBetter(standing, best)) continue;
			best = { ...standing };
			addition = member;
		}
	}
	return addition;
}

function shuffled(items: readonly number[], random: () => number): number[] {
	const mixed = [...items];
	for (let i = mixed.length - 1; i > 0; i--) {
		const j = Math.floor(random() * (i + 1));
		[mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
	}
	return mixed;
}

/** A first set: the fixed ones and, where it is needed, a warm coat, filled up by the best addition each time (start 0) or by chance. */
function startingSet(search: Search, start: number, random: () => number): number[] {
	const { problem, tried } = search;
	const warm = search.needsWarm ? tried.outer.filter((member) => problem.warmOuter.has(member)) : [];
	const hasWarm = problem.fixed.some((member) => problem.warmOuter.has(member));
	const members = [...problem.fixed];
	if (!hasWarm && warm.length > 0) members.push(start === 0 ? warm[0]! : warm[Math.floor(random() * warm.length)]!);
	if (start === 0) {
		for (let next = bestAddition(search, members); next !== null; next = bestAddition(search, members))
			members.push(next);
		return members;
	}
	for (const slot of SLOTS) {
		const rest = tried[slot].filter((member) => !members.includes(member));
		for (let places = problem.places[slot] - countIn(search, members, slot); places > 0 && rest.length > 0; places--)
			members.push(...rest.splice(Math.floor(random() * rest.length), 1));
	}
	return members;
}

function searchOf(problem: LineUpProblem): Search {
	const tried = triedOf(problem);
	const keptOuter = problem.fixed.filter((member) => problem.slots[member] === 'outer');
	const hasWarm = keptOuter.some((member) => problem.warmOuter.has(member));
	const canHaveWarm =
		keptOuter.length < problem.places.outer && tried.outer.some((member) => problem.warmOuter.has(member));
	return { problem, tried, needsWarm: hasWarm || canHaveWarm, evaluate: evaluatorOf(problem) };
}

/** The best set that seeded starts find, each improved step by step. Deterministic; a tie goes to the smaller largest gap, then to less left to buy. */
export function bestSet(problem: LineUpProblem, starts = STARTS): ScoredSet {
	const search = searchOf(problem);
	const random = seededRandom('line-up');
	let best: { readonly members: readonly number[]; readonly standing: Standing } | null = null;
	for (let start = 0; start < starts; start++) {
		const members = startingSet(search, start, random);
		const order = start === 0 ? search.tried : bySlot((slot) => shuffled(search.tried[slot], random));
		const standing = improve(search, members, order);
		if (!best || isBetter(standing, best.standing)) best = { members: [...members].sort((a, b) => a - b), standing };
	}
	return scoreOf(problem, best!.members);
}

/** The set that a single greedy pass chooses, for comparison. */
export function greedySet(problem: LineUpProblem): ScoredSet {
	return scoreOf(
		problem,
		startingSet(searchOf(problem), 0, () => 0),
	);
}
