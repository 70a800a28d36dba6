import { bestWay, carry, NO_MOVE, NOTHING, type TransportState } from './transport-ways.ts';

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
	const unmet = unmetCosts(cost, demand.length, mostCost);
	const state: TransportState = {
		gain: (from, to) => unmet[to]! - cost[from]![to]!,
		free: [...demand],
		surplus: [...supply],
		held: demand.map(() => new Map()),
		moves: demand.map(() => new Array(demand.length + 1).fill(NO_MOVE)),
	};
	for (let from = 0; from < supply.length; from++) {
		while (state.surplus[from]! > NOTHING) {
			const way = bestWay(state, from);
			if (!way) break;
			carry(state, from, way);
		}
	}
	const flows = state.held
		.flatMap((amounts, to) => [...amounts].map(([from, amount]) => ({ from, to, amount })))
		.sort((a, b) => a.from - b.from || a.to - b.to);
	const some = (amount: number) => (amount > NOTHING ? amount : 0);
	return {
		flows,
		cost: flows.reduce((sum, { from, to, amount }) => sum + amount * cost[from]![to]!, 0),
		missing: state.free.map(some),
		surplus: state.surplus.map(some),
	};
}
