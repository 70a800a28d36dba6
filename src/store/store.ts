import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import type { Palette } from '../wardrobe/words/palette-colour.ts';
import type { Correction, Reading } from '../wardrobe/words/reading.ts';
import type { Inspiration, LineUpChoice, Season } from '../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../wardrobe/words/wear.ts';
import type { CandidateDetails, Maker, Wish } from '../wardrobe/words/wish.ts';
import type { IncomingFile } from './incoming-file.ts';
import type { OpenedFile } from './open-file.ts';
import type { PairingRecords } from './pairing-records.ts';
import type { ShowingKind } from './shown-photos.ts';

/** A photo as kept: the untouched original by content hash, and what was read of it. */
export type PhotoRecord = {
	/** SHA-256 of the original's bytes, hex: the same photo twice is one record. */
	readonly id: string;
	/** The user's file name, shown as text only. */
	readonly originalName: string;
	readonly mediaType: string;
	readonly sizeBytes: number;
	readonly addedAt: string;
	readonly status: 'waiting' | 'read' | 'failed';
	readonly failure: { readonly reason: string; readonly message: string } | null;
	readonly correction: Correction;
	/** Raised by every correction; part of the addresses of derived pictures. */
	readonly version: number;
	readonly reading: Reading | null;
};

/** Derived pictures of a photo: a WebP thumbnail, the upright display copy (JPEG), the parser's label map (grey PNG, value = class), the user's mask (grey PNG, 255 = clothes), a WebP cut-out with alpha. */
export type DerivedName = 'thumb' | 'display' | 'labels' | 'mask' | 'cutout';

/** A deleted entry in the bin, kept 90 days. */
export type BinEntry = {
	readonly id: string;
	readonly what: 'garment' | 'inspiration' | 'wish' | 'candidate' | 'season';
	readonly name: string;
	readonly deletedAt: string;
};

/** One undoable decision. */
export type Decision = {
	readonly id: number;
	readonly at: string;
	readonly sentence: string;
	readonly undone: boolean;
};

/** An entry as it was read, with the revision that changed it last. */
export type Kept<T> = T & { readonly version: number };

/** What can be asked of the entries of one kind. What lies in the bin is never among them. */
export type Reads<T> = {
	/** By id, in code point order. */
	list(): Promise<Kept<T>[]>;
	/** How many `list` would give, without reading them. */
	count(): Promise<number>;
	get(id: string): Promise<Kept<T> | null>;
};

/** Everything that can be asked of a home: outside of any decision, or within one, where nothing can change meanwhile. */
export type HomeReads = {
	readonly seasons: Reads<Season>;
	readonly garments: Reads<GarmentDetails>;
	readonly inspirations: Reads<Inspiration>;
	readonly wishes: Reads<Wish>;
	readonly candidates: Reads<CandidateDetails>;
	readonly makers: Reads<Maker>;
	readonly photos: {
		get(id: string): Promise<PhotoRecord | null>;
		list(ids?: readonly string[]): Promise<PhotoRecord[]>;
		/** How many photos there are in each status, without reading what was read of them. */
		counts(): Promise<Record<PhotoRecord['status'], number>>;
		/** Ids of the photos that wait to be read, in the order in which they came. */
		waiting(): Promise<string[]>;
		/** Name of the mask that the photo's correction has, or null. */
		maskOf(id: string): Promise<string | null>;
		/** Photos read that may share a light: of one named group, or taken in one go with this time. Reads no others. */
		near(photo: { readonly takenAt: string | null; readonly lightGroup: string | null }): Promise<PhotoRecord[]>;
	};
	/** Ids of the entries of a kind that show the photo. */
	showing(kind: ShowingKind, photoId: string): Promise<string[]>;
	/** The season's palette as last derived or edited; null before the first. */
	palette(seasonId: string): Promise<Palette | null>;
	lineUp(seasonId: string): Promise<LineUpChoice | null>;
	wears(range?: { readonly from?: string; readonly to?: string }): Promise<Wear[]>;
	pairWords(): Promise<PairWord[]>;
	/** Names of the fields that were changed since this version of an entry; empty where it is the newest. */
	changesSince(kind: VersionedKind, id: string, version: number): Promise<string[]>;
};

/** Kinds of entries that carry a version. */
export type VersionedKind =
	| 'season'
	| 'garment'
	| 'inspiration'
	| 'wish'
	| 'candidate'
	| 'maker'
	| 'palette'
	| 'line-up';

/** What to put (inserted or replaced) and the ids to take away; ids that name nothing are passed over. */
export type Changes<T> = { readonly put?: readonly T[]; readonly remove?: readonly string[] };

/** A photo whose bytes are kept already, and that a decision brings in; one that was read before comes with its `reading`. */
export type NewPhoto = Pick<PhotoRecord, 'id' | 'originalName' | 'mediaType' | 'sizeBytes' | 'addedAt'> & {
	readonly reading?: Reading;
};

/** What one decision does. */
export type Decided = {
	readonly seasons?: Changes<Season>;
	readonly garments?: Changes<GarmentDetails>;
	readonly inspirations?: Changes<Inspiration>;
	readonly wishes?: Changes<Wish>;
	readonly candidates?: Changes<CandidateDetails>;
	readonly makers?: Changes<Maker>;
	readonly wears?: { readonly put?: readonly Wear[]; readonly remove?: readonly Wear[] };
	readonly palettes?: readonly { readonly seasonId: string; readonly palette: Palette }[];
	readonly lineUps?: readonly LineUpChoice[];
	/** `word: null` takes it back. */
	readonly pairWords?: readonly { readonly a: string; readonly b: string; readonly word: PairWord['word'] | null }[];
	/** Photos that come in; undoing leaves them. */
	readonly photos?: readonly NewPhoto[];
	/** New corrections of photos, each with the name of its kept mask; the photo's version rises and it waits to be read. */
	readonly corrections?: readonly {
		readonly photoId: string;
		readonly correction: Correction;
		readonly mask: string | null;
	}[];
};

/** A decision about to be made, from what was read: what it does, in plain words, and what to answer once it is done. */
export type Plan<T> = {
	readonly does: Decided;
	/** What follows from it and is part of the same decision, worked out from the home as `does` leaves it. */
	readonly follows?: (after: HomeReads) => Promise<Decided>;
	readonly sentence: string;
	readonly answer: (after: HomeReads) => Promise<T>;
};

/** Who asks: a request with a key that comes once more is answered as before and does nothing. */
export type Asked = {
	/** null = it may be carried out again. */
	readonly key: string | null;
	/** What is asked, in short; the same key with anything else is refused. */
	readonly request: string;
};

/** An entry that was changed; `seasonId` where it belongs to one. Of a correction, `id` is the photo's; `*` stands for many of the kind. */
export type ChangedEntry = { readonly kind: string; readonly id: string; readonly seasonId?: string };

/** What came of a request to decide. */
export type Outcome<T> = {
	readonly answer: T;
	readonly changed: readonly ChangedEntry[];
	/** It was answered before, and nothing was done now. */
	readonly repeated: boolean;
};

/** Nobody's request: carried out each time. */
export const UNASKED: Asked = { key: null, request: '' };

/**
 * Everything the program remembers. An awaited change is on disk (write-ahead log, synchronous FULL).
 * Implementations: SQLite (default), PostgreSQL.
 */
export type Store = Omit<HomeReads, 'photos'> & {
	readonly photos: PhotoStore;
	/** Devices of the local network that may come in. */
	readonly pairings: PairingRecords;
	/**
	 * One decision: what it depends on is read and what it changes is written in one transaction, all of it or nothing, and one undo takes it
	 * back. `plan` must wait for nothing but these reads. Throws `KeyReusedError`.
	 */
	decide<T>(asked: Asked, plan: (home: HomeReads) => Promise<Plan<T>>): Promise<Outcome<T>>;
	/** The same for what the program finds out by itself: nobody's decision, so that undo passes over it. */
	note(plan: (home: HomeReads) => Promise<Decided>): Promise<readonly ChangedEntry[]>;
	decisions(limit: number): Promise<Decision[]>;
	/** How many bytes the changes take that `undo` or `redo` would move now; 0 where there is nothing to move. */
	sizeOfNext(which: 'undo' | 'redo'): Promise<number>;
	/** Undoes the newest not yet undone decision; null when there is none. */
	undo(asked?: Asked): Promise<Outcome<Decision | null>>;
	/** Takes back the last undo. */
	redo(asked?: Asked): Promise<Outcome<Decision | null>>;
	bin(): Promise<BinEntry[]>;
	/** False where nothing of this id lies there. A season brings the garments along that went to the bin with it. */
	restoreFromBin(id: string, asked?: Asked): Promise<Outcome<boolean>>;
	close(): Promise<void>;
};

/** Photos: their rows, and the files beside them. A file is always on disk before the row that names it. */
export type PhotoStore = HomeReads['photos'] & {
	/** Writes and syncs the original; returns its id. Known content is not written again. The photo comes in with a decision. */
	keepOriginal(bytes: Uint8Array): Promise<string>;
	/** The same for a file that came in; it is moved to its place. */
	keepFile(file: IncomingFile): Promise<string>;
	/** Writes and syncs a mask drawn by hand; returns its name for a correction. */
	keepMask(id: string, mask: Uint8Array): Promise<string>;
	/** Writes and syncs derived pictures. */
	keepDerived(id: string, derived: Partial<Record<DerivedName, Uint8Array>>): Promise<void>;
	saveReading(id: string, reading: Reading, derived: Partial<Record<DerivedName, Uint8Array>>): Promise<void>;
	saveFailure(id: string, failure: { readonly reason: string; readonly message: string }): Promise<void>;
	original(id: string): Promise<Uint8Array>;
	/** The same as it is read, never held as a whole; null where it is missing. */
	openOriginal(id: string): Promise<OpenedFile | null>;
	/** Absolute path of the original for a worker to read, or null where the store has no local files. */
	originalPath(id: string): Promise<string | null>;
	derived(id: string, name: DerivedName): Promise<Uint8Array | null>;
};
