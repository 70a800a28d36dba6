import { lineUpBound } from './line-up-bound.ts';
import { type OutfitTable, outfitCeiling } from './outfits.ts';
import type { LineUpWeights, Quotas } from './season.ts';
import { SLOTS, type Slot } from './slot.ts';

/** What a line-up is chosen from, by numbers alone: pieces are indices, 0 .. slots.length - 1. */
export type LineUpChoices = {
	readonly slots: readonly Slot[];
	/** Row-major, pieces x pieces: 1 where the two go together. Symmetric. */
	readonly together: Uint8Array;
	/** 0..1 for each piece. */
	readonly fit: readonly number[];
	readonly loved: readonly number[];
	readonly weights: LineUpWeights;
	readonly quotas: Quotas;
	/** Pieces that must be in, ascending. */
	readonly fixed: readonly number[];
	/** Outer pieces warm enough; one of them must be in where there is one and a place for it. Empty = no need. */
	readonly warmOuter: ReadonlySet<number>;
};

/** A line-up to choose, with everything that does not change while searching. */
export type LineUpProblem = Omit<LineUpChoices, 'quotas'> & {
	readonly table: OutfitTable;
	/** Pieces to choose a slot: the quota, or less where fewer are owned, or more where more must be kept. */
	readonly places: Quotas;
	/** Who may be chosen besides the fixed ones, by slot, ascending. */
	readonly choices: Readonly<Record<Slot, readonly number[]>>;
	/** Pieces asked for in all, and the outfits they would make if everything went together. Not less where fewer are owned, so that owning more never makes a set worth less. */
	readonly size: number;
	readonly ceiling: number;
	/** No set of this problem can have a higher objective. */
	readonly bound: number;
};

/** The same value worked out for each slot. */
export const bySlot = <T>(value: (slot: Slot) => T): Record<Slot, T> =>
	Object.fromEntries(SLOTS.map((slot) => [slot, value(slot)])) as Record<Slot, T>;

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
