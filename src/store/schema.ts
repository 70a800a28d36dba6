import type { Generated } from 'kysely';

/** Everything the user decides, each entry one JSON document: one mechanism then undoes, bins, exports and restores all of it. */
export type EntryRow = {
	kind: string;
	id: string;
	/** JSON. */
	body: string;
	/** ISO instant at which it was put in the bin, or null. */
	binned_at: string | null;
	/** The revision that changed it last. */
	version: Generated<number>;
	/** JSON: the revision that changed each field last; `*` the one that made the entry. */
	field_versions: Generated<string>;
};

/** One row: the number of the newest change. Every change has one, whichever program made it. */
export type RevisionRow = { id: number; newest: number };

/** What a request with a key was answered, kept for a day: sent once more, it is answered the same and does nothing. */
export type AnswerRow = {
	key: string;
	/** What was asked, so that a key used for something else is noticed. */
	request: string;
	/** JSON. */
	answer: string;
	at: string;
};

/** Which entry shows which photo. */
export type ShownPhotoRow = { photo_id: string; kind: string; entry_id: string };

/** One undoable decision: what each entry was before and after. */
export type DecisionRow = {
	id: Generated<number>;
	at: string;
	sentence: string;
	/** JSON, see `changes-text.ts`. */
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
	/** Name of the file with the user's mask, or null: a new mask is a new file, so that the old one stays until the row has changed. */
	mask: string | null;
	/** When it was taken, ISO 8601 local without zone, and the light group that the user named; null = unknown, none. Photos of one light are found by them. */
	taken_at: string | null;
	light_group: string | null;
};

/** A row that could not be read, kept as it was found so that nothing is lost. */
export type SetAsideRow = {
	/** Table it comes from. */
	source: string;
	id: string;
	/** What stood in the column that cannot be read. */
	body: string;
	at: string;
};

/** A paired device; the token it shows is kept as its hash only. */
export type PairingRow = { id: string; token_hash: string; device: string; paired_at: string; seen_at: string };

/** The tables, as the query builder sees them. */
export type Tables = {
	entries: EntryRow;
	decisions: DecisionRow;
	photos: PhotoRow;
	set_aside: SetAsideRow;
	pairings: PairingRow;
	revisions: RevisionRow;
	answers: AnswerRow;
	shown_photos: ShownPhotoRow;
};
