import type { OutfitTable } from '../pairs/outfits.ts';
import type { LineUpWeights, Quotas } from '../words/season.ts';
import type { Slot } from '../words/slot.ts';

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
