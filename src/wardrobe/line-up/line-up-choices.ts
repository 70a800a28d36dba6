import type { PartOffer } from '../days/enough.ts';
import type { LineUpWeights, Quotas } from '../words/season.ts';
import type { Slot } from '../words/slot.ts';

/** What is asked of a line-up. */
export type LineUpRequest = {
	readonly quotas: Quotas;
	readonly targetCount: number;
	readonly mustKeep: readonly string[];
	readonly neverUse: readonly string[];
};

/** What a line-up is chosen from, by numbers alone: pieces are indices, 0 .. slots.length - 1, those to prefer on a tie first. */
export type LineUpChoices = {
	readonly slots: readonly Slot[];
	/** Row-major, pieces x pieces: 1 where the two are worn together and something speaks for it. Symmetric. */
	readonly together: Uint8Array;
	/** 0..1 for each piece. */
	readonly fit: readonly number[];
	readonly loved: readonly number[];
	/** The same number for pieces that look alike. */
	readonly look: readonly number[];
	/** What each gives to the days between two washes; `null` for what is no part of a body. */
	readonly offers: readonly (PartOffer | null)[];
	/** Days asked of each occasion between two washes. */
	readonly askedDays: readonly number[];
	/** Share of the palette that each of its colours asks for; sum to 1, or none. */
	readonly colourWeights: readonly number[];
	/** Row-major, pieces x colours: cloth of the colour that the piece brings, a whole top = 1. */
	readonly holds: Float64Array;
	/** For each picture that the wardrobe can wear, for each of its pieces, who answers it. */
	readonly pictures: readonly (readonly (readonly number[])[])[];
	readonly weights: LineUpWeights;
	readonly quotas: Quotas;
	/** Pieces that must be in, ascending. */
	readonly fixed: readonly number[];
	/** Favourites, basics and much-worn pieces: they come before all others, as far as there are places. */
	readonly settled: readonly number[];
	/** Outer pieces warm enough; one of them must be in where there is one and a place for it. Empty = no need. */
	readonly warmOuter: ReadonlySet<number>;
};

/** A line-up to choose, with everything that does not change while searching. */
export type LineUpProblem = Omit<LineUpChoices, 'quotas' | 'settled'> & {
	/** Most pieces a slot: the quota, or more where more must be kept. */
	readonly places: Quotas;
	/** Who may be chosen besides the fixed ones, by slot, ascending. */
	readonly choices: Readonly<Record<Slot, readonly number[]>>;
	/** Pieces asked for in all. Not less where fewer are owned, so that owning more never makes a set worth less. */
	readonly size: number;
	/** Pairs of pieces that a full set could wear together. */
	readonly mostPairs: number;
	/** Cloth of each palette colour that a full set should bring, a whole top = 1. */
	readonly clothAsked: readonly number[];
	/** No set of this problem can have a higher objective. */
	readonly bound: number;
};
