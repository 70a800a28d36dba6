/** Amounts under this are rounding. */
export const NOTHING = 1e-12;

/** Moving something held at one demand on: what that gains, and who moves (-1: nobody can). */
type Move = { readonly change: number; readonly mover: number };
export const NO_MOVE: Move = { change: Number.NEGATIVE_INFINITY, mover: -1 };

/** A transport while supplies are inserted. */
export type TransportState = {
	/** What carrying a unit saves: below 0 it is better left. */
	readonly gain: (from: number, to: number) => number;
	/** Demand still unmet, by demand, and supply left, by supply. */
	readonly free: number[];
	readonly surplus: number[];
	/** What each demand holds of each supply. */
	readonly held: readonly Map<number, number>[];
	/** Best move from one demand to another (the last column: out, to the surplus). */
	readonly moves: readonly Move[][];
};

/** A way for a unit: demands in order, the last with room or with something to push out. */
type Way = { readonly demands: readonly number[]; readonly pushesOut: boolean };

/** Finds the best moves of what demand `j` holds anew. */
function refreshMoves({ gain, held, moves }: TransportState, j: number): void {
	const outside = moves.length;
	for (let k = 0; k <= outside; k++) {
		let best = NO_MOVE;
		if (k !== j) {
			for (const mover of held[j]!.keys()) {
				const change = (k === outside ? 0 : gain(mover, k)) - gain(mover, j);
				if (change > best.change + NOTHING || (Math.abs(change - best.change) <= NOTHING && mover < best.mover))
					best = { change, mover };
			}
		}
		moves[j]![k] = best;
	}
}

/** The most that a unit of `from` gains by coming to each demand over others, and the demand before it on that way (-1: none). */
function reachOf(
	{ gain, moves }: TransportState,
	from: number,
): { readonly value: number[]; readonly before: number[] } {
	const value = moves.map((_, j) => gain(from, j));
	const before = moves.map(() => -1);
	for (let round = 1; round < moves.length; round++) {
		let changed = false;
		for (let j = 0; j < moves.length; j++) {
			for (let k = 0; k < moves.length; k++) {
				const reached = value[j]! + moves[j]![k]!.change;
				if (reached <= value[k]! + 1e-9) continue;
				value[k] = reached;
				before[k] = j;
				changed = true;
			}
		}
		if (!changed) break;
	}
	return { value, before };
}

/** The most rewarding way for a unit of `from`; null where it is better left. */
export function bestWay(state: TransportState, from: number): Way | null {
	const { free, moves } = state;
	const { value, before } = reachOf(state, from);
	let best = { end: -1, pushesOut: false, value: 1e-9 };
	for (let j = 0; j < moves.length; j++) {
		const options = [
			{ end: j, pushesOut: false, value: free[j]! > NOTHING ? value[j]! : Number.NEGATIVE_INFINITY },
			{ end: j, pushesOut: true, value: value[j]! + moves[j]![moves.length]!.change },
		];
		for (const option of options) if (option.value > best.value + 1e-9) best = option;
	}
	if (best.end < 0) return null;
	const demands = [best.end];
	for (let at = before[best.end]!; at !== -1; at = before[at]!) demands.unshift(at);
	return { demands, pushesOut: best.pushesOut };
}

function add(held: Map<number, number>, who: number, amount: number): void {
	const now = (held.get(who) ?? 0) + amount;
	if (now > NOTHING) held.set(who, now);
	else held.delete(who);
}

/** Carries as much of `from` along the way as fits, displacing what stands there. */
export function carry(state: TransportState, from: number, { demands, pushesOut }: Way): void {
	const { free, surplus, held, moves } = state;
	const next = (step: number) => demands[step + 1] ?? (pushesOut ? moves.length : null);
	const movers = demands.map((j, step) => {
		const to = next(step);
		return to === null ? -1 : moves[j]![to]!.mover;
	});
	let amount = surplus[from]!;
	for (const [step, mover] of movers.entries())
		if (mover >= 0) amount = Math.min(amount, held[demands[step]!]!.get(mover)!);
	const last = demands.at(-1)!;
	if (!pushesOut) amount = Math.min(amount, free[last]!);
	let carried = from;
	surplus[from]! -= amount;
	for (const [step, j] of demands.entries()) {
		add(held[j]!, carried, amount);
		const mover = movers[step]!;
		if (mover < 0) break;
		add(held[j]!, mover, -amount);
		carried = mover;
	}
	if (pushesOut) surplus[carried]! += amount;
	else free[last]! -= amount;
	for (const j of demands) refreshMoves(state, j);
}
