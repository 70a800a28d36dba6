import type { YearPart } from './garment.ts';
import type { Kind, OfferedOccasion } from './kind.ts';
import type { Slot } from './slot.ts';
import type { Versioned } from './versioned.ts';

/** Pieces wanted per slot. */
export type Quotas = Readonly<Record<Slot, number>>;

/** Weights of what a set is worth, each 0..1, shown to the user. */
export type LineUpWeights = {
	/** Pictures that it makes wearable. */
	readonly pictures: number;
	/** Days that it dresses between two washes. */
	readonly enough: number;
	/** Palette that it covers. */
	readonly palette: number;
	readonly fit: number;
	readonly loved: number;
	/** Pairs of its pieces that go together, which is what outfits are made of. */
	readonly outfits: number;
};

/** What some days ask of clothes. */
export type Occasion = {
	/** One of the offered names, or the user's own word. */
	readonly name: string;
	/** Which of the offered ones it is like, so that kinds are known to serve it. */
	readonly like: OfferedOccasion;
	/** Days a week, 0..7; those of all occasions sum to at most 7. */
	readonly daysAWeek: number;
};

/** What the days of a season are like. */
export type SeasonDays = {
	/** Air temperature of a usual cold and a usual warm day, degrees Celsius. */
	readonly coldDay: number;
	readonly warmDay: number;
	/** Days from one wash to the next, 1 or more. */
	readonly washEveryDays: number;
	/** Wears before a wash, by kind, where the user wants others than usual. */
	readonly wearsPerWash: Readonly<Partial<Record<Kind, number>>>;
	readonly occasions: readonly Occasion[];
};

/** One planning period. */
export type Season = Versioned & {
	readonly id: string;
	readonly name: string;
	/** Recurs every year: notes and palettes of the same part are compared. */
	readonly yearPart: YearPart;
	/** ISO dates. */
	readonly startsOn: string;
	readonly endsOn: string;
	/** Garments wanted in the line-up. */
	readonly targetCount: number;
	readonly quotas: Quotas;
	/** What its days are like; absent = as offered for its months, see `daysOfSeason`. */
	readonly days?: SeasonDays;
	readonly weights: LineUpWeights;
	/** Palette size asked for; `null` = as many colours as the board holds. */
	readonly baseCount: number | null;
	readonly colourCount: number | null;
	/** Days a wish waits before "new, from makers the user trusts" opens. */
	readonly waitingDays: number;
	/** Notes for the same season next year. */
	readonly notes: string;
	/** What was missed while wearing, free sentences. */
	readonly feltGaps: readonly string[];
	readonly archived: boolean;
	readonly addedAt: string;
};

/** A picture in a season's board. */
export type Inspiration = Versioned & {
	readonly id: string;
	readonly seasonId: string;
	readonly photoId: string;
	/** As the user gave it; of a picture that nobody named, '' in the store and what it shows where it is read. */
	readonly title: string;
	/** Who named it. Absent in homes older than this field. */
	readonly titleFrom?: 'user' | 'looks';
	/** Free name that gathers pictures on the board; '' = none. */
	readonly group: string;
	/** What the user said of pieces that the picture shows: `piece` counts the reading's pieces from 0. Absent = nothing. */
	readonly pieceKinds?: readonly { readonly piece: number; readonly kind: Kind }[];
	readonly addedAt: string;
};

/** The set chosen for a season, and what the user fixed about it. */
export type LineUpChoice = Versioned & {
	readonly seasonId: string;
	readonly garmentIds: readonly string[];
	readonly mustKeep: readonly string[];
	readonly neverUse: readonly string[];
	/** The gaps as they stood in the list when the set was chosen or photos were last read: they keep that order until one is worth clearly more. Absent where none were noted yet. */
	readonly gapIds?: readonly string[];
};
