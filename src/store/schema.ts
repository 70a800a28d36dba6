import type { Generated } from 'kysely';

/** Everything the user decides, each thing one JSON document: one mechanism then undoes, bins, exports and restores all of it. */
export type ThingRow = {
	kind: string;
	id: string;
	/** JSON. */
	body: string;
	/** ISO instant at which it was put in the bin, or null. */
	binned_at: string | null;
};

/** One undoable decision: what each thing was before and after. */
export type DecisionRow = {
	id: Generated<number>;
	at: string;
	sentence: string;
	/** JSON of `Change[]`. */
	changes: string;
	/** 1 once taken back. */
	undone: number;
};

export type PhotoRow = {
	id: string;
	original_name: string;
	media_type: string;
	size_bytes: number;
	added_at: string;
	status: 'waiting' | 'read' | 'failed';
	/** JSON or null. */
	failure: string | null;
	/** JSON. */
	correction: string;
	version: number;
	/** JSON or null. */
	reading: string | null;
};

/** The tables, as the query builder sees them. */
export type Tables = { things: ThingRow; decisions: DecisionRow; photos: PhotoRow };
