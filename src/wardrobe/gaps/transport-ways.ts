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

/** What moving `mover` from demand `j` to `k` (past the last: out, to the surplus) gains a unit. */
const changeOf = ({ gain, moves }: TransportState, mover: number, j: number, k: number): number =>
	(k === moves.length ? 0 : gain(mover, k)) - gain(mover, j);

/** The better of a move and what `mover` would gain; ties go to the lower index. */
const betterMove = (best: Move, change: number, mover: number): Move =>
	change > best.change + NOTHING || (Math.abs(change - best.change) <= NOTHING && mover < best.mover)
		? { change, mover }
		: best;

/** Takes `mover`, which demand `j` holds now, among the best moves from there. */
function joinMoves(state: TransportState, j: number, mover: number): void {
	const own = state.moves[j]!;
	for (let k = 0; k < own.length; k++) if (k !== j) own[k] = betterMove(own[k]!, changeOf(state, mover, j, k), mover);
}

/** Finds the moves anew that `mover` was the best for: demand `j` holds it no longer. */
function leaveMoves(state: TransportState, j: number, mover: number): void {
	const own = state.moves[j]!;
	for (let k = 0; k < own.length; k++) {
		if (own[k]!.mover !== mover) continue;
		let best = NO_MOVE;
		for (const other of state.held[j]!.keys()) best = betterMove(best, changeOf(state, other, j, k), other);
		own[k] = best;
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

/** Changes what demand `j` holds of `who`, and with it the best moves from there. */
function hold(state: TransportState, j: number, who: number, amount: number): void {
	const held = state.held[j]!;
	const before = held.get(who);
	const now = (before ?? 0) + amount;
	if (now > NOTHING) {
		held.set(who, now);
		if (before === undefined) joinMoves(state, j, who);
	} else if (held.delete(who)) leaveMoves(state, j, who);
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
		hold(state, j, carried, amount);
		const mover = movers[step]!;
		if (mover < 0) break;
		hold(state, j, mover, -amount);
		carried = mover;
	}
	if (pushesOut) surplus[carried]! += amount;
	else free[last]! -= amount;
}
