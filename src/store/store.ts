import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import type { Palette } from '../wardrobe/words/palette-colour.ts';
import type { Correction, Reading } from '../wardrobe/words/reading.ts';
import type { Inspiration, LineUpChoice, Season } from '../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../wardrobe/words/wear.ts';
import type { CandidateDetails, Maker, Wish } from '../wardrobe/words/wish.ts';
import type { IncomingFile } from './incoming-file.ts';
import type { PairingRecords } from './pairing-records.ts';

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

/** A deleted thing in the bin, kept 90 days. */
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

/** A table of things with an id, all in one shape. Reads never include what lies in the bin. */
export type Collection<T extends { readonly id: string }> = {
	list(): Promise<T[]>;
	/** How many `list` would give, without reading them. */
	count(): Promise<number>;
	get(id: string): Promise<T | null>;
	/** Inserts or replaces; undoable; on disk when it resolves. `sentence` describes the decision in plain words. */
	put(item: T, sentence: string): Promise<void>;
	/** Moves it to the bin; false when there is no such id. */
	remove(id: string, sentence: string): Promise<boolean>;
	/** Several at once as one decision: all of it or nothing, and one undo takes it back. Ids to remove that name nothing are passed over. */
	change(what: Changes<T>, sentence: string): Promise<void>;
	/** Writes what the program found out by itself: nobody's decision, undo passes over it. Nothing where the thing is gone meanwhile. */
	note(item: T): Promise<void>;
};

/** What to put (inserted or replaced) and the ids to remove. */
export type Changes<T> = { readonly put?: readonly T[]; readonly remove?: readonly string[] };

/** What one decision does to things of several kinds. */
export type Decided = {
	readonly seasons?: Changes<Season>;
	readonly garments?: Changes<GarmentDetails>;
	readonly inspirations?: Changes<Inspiration>;
	readonly wears?: readonly Wear[];
	readonly palettes?: readonly { readonly seasonId: string; readonly palette: Palette }[];
};

/**
 * Everything the program remembers. An awaited change is on disk (write-ahead log, synchronous FULL).
 * Implementations: SQLite (default), PostgreSQL.
 */
export type Store = {
	readonly seasons: Collection<Season>;
	readonly garments: Collection<GarmentDetails>;
	readonly inspirations: Collection<Inspiration>;
	readonly wishes: Collection<Wish>;
	readonly candidates: Collection<CandidateDetails>;
	readonly makers: Collection<Maker>;
	readonly photos: {
		list(ids?: readonly string[]): Promise<PhotoRecord[]>;
		/** How many photos there are in each status, without reading what was read of them. */
		counts(): Promise<Record<PhotoRecord['status'], number>>;
		/** Ids of the photos that wait to be read, in the order in which they came. */
		waiting(): Promise<string[]>;
		get(id: string): Promise<PhotoRecord | null>;
		/** Writes, syncs and renames the file, then its row. Known content returns the known record. */
		add(
			bytes: Uint8Array,
			about: { readonly originalName: string; readonly mediaType: string; readonly addedAt: string },
		): Promise<PhotoRecord>;
		/** The same for a file that came in; it is moved to its place. */
		addFile(
			file: IncomingFile,
			about: { readonly originalName: string; readonly mediaType: string; readonly addedAt: string },
		): Promise<PhotoRecord>;
		saveReading(id: string, reading: Reading, derived: Partial<Record<DerivedName, Uint8Array>>): Promise<void>;
		saveFailure(id: string, failure: { readonly reason: string; readonly message: string }): Promise<void>;
		/** Replaces the correction (and mask file), raises the version, sets status to waiting. */
		saveCorrection(id: string, correction: Correction, mask: Uint8Array | null): Promise<PhotoRecord>;
		original(id: string): Promise<Uint8Array>;
		/** Absolute path of the original for a worker to read, or null where the store has no local files. */
		originalPath(id: string): Promise<string | null>;
		derived(id: string, name: DerivedName): Promise<Uint8Array | null>;
	};
	/** Devices of the local network that may come in. */
	readonly pairings: PairingRecords;
	/** The season's palette as last derived or edited; null before the first. */
	palette(seasonId: string): Promise<Palette | null>;
	savePalette(seasonId: string, palette: Palette, sentence: string): Promise<void>;
	lineUp(seasonId: string): Promise<LineUpChoice | null>;
	saveLineUp(choice: LineUpChoice, sentence: string): Promise<void>;
	wears(range?: { readonly from?: string; readonly to?: string }): Promise<Wear[]>;
	addWears(wears: readonly Wear[], sentence: string): Promise<void>;
	removeWear(wear: Wear, sentence: string): Promise<void>;
	pairWords(): Promise<PairWord[]>;
	/** `word: null` takes it back. */
	savePairWord(a: string, b: string, word: PairWord['word'] | null, sentence: string): Promise<void>;
	decisions(limit: number): Promise<Decision[]>;
	/** Undoes the newest not yet undone decision; null when there is none. */
	undo(): Promise<Decision | null>;
	/** Takes back the last undo. */
	redo(): Promise<Decision | null>;
	/** A decision about things of several kinds: all of it or nothing, and one undo takes it back. */
	decide(what: Decided, sentence: string): Promise<void>;
	bin(): Promise<BinEntry[]>;
	/** False where nothing of this id lies there. A season brings the garments along that went to the bin with it. */
	restoreFromBin(id: string): Promise<boolean>;
	close(): Promise<void>;
};
