import type { Kind } from './kind.ts';
import type { Appearance, PatternType } from './reading.ts';
import type { Versioned } from './versioned.ts';

/** A garment's place: in use this season, put away, decided to leave but still here, left. */
export const PLACES = ['rail', 'stored', 'leaving', 'gone'] as const;
export type Place = (typeof PLACES)[number];

/** The four times of the year a garment or season serves. */
export const YEAR_PARTS = ['spring', 'summer', 'autumn', 'winter'] as const;
export type YearPart = (typeof YEAR_PARTS)[number];

/** Ways out of the house for a leaving garment. */
export const WAYS_OUT = ['mend', 'sell', 'swap', 'give', 'recycle'] as const;
export type WayOut = (typeof WAYS_OUT)[number];

export const CONDITIONS = ['good', 'worn', 'worn-out'] as const;
export type Condition = (typeof CONDITIONS)[number];

/** What is stored of a garment, apart from what its photos say. */
export type GarmentDetails = Versioned & {
	readonly id: string;
	/** As the user gave it; of a garment that nobody named, what it was called when last looked at. */
	readonly name: string;
	/** Who named it: the user, or the program by its looks. Absent in homes older than this field. */
	readonly nameFrom?: 'user' | 'looks';
	readonly kind: Kind;
	/** Who named the kind: the user, the photo's reading (a suggestion), or nobody yet (`kind` is then a placeholder). */
	readonly kindFrom: 'user' | 'photo' | 'none';
	/** First is the one shown. Several photos of one garment (front, back) are read together. */
	readonly photoIds: readonly string[];
	readonly place: Place;
	/** In the user's own currency; null = not told. */
	readonly price: number | null;
	/** ISO date or null. */
	readonly boughtOn: string | null;
	/** Parts of the year it serves; empty = not told, counts as all. */
	readonly yearParts: readonly YearPart[];
	/** Year-round basic: never suggested for storing. */
	readonly basic: boolean;
	/** How loved, 0 (not) .. 3 (dearly); null = not told. */
	readonly loved: 0 | 1 | 2 | 3 | null;
	/** 0 none .. 3 winter; null = the kind's usual warmth. */
	readonly warmth: 0 | 1 | 2 | 3 | null;
	/** Occasions it serves, by name, where the user said so; absent or empty = what its kind usually serves. */
	readonly occasions?: readonly string[];
	readonly condition: Condition;
	/** ISO date on which that was told; absent where nobody told it, or in a home older than this field. */
	readonly conditionSince?: string;
	readonly wayOut: WayOut | null;
	/** Ids of the seasons in whose round of sorting it was decided on; absent = none. */
	readonly sortedFor?: readonly string[];
	/** Set by the user where the reading is wrong. */
	readonly patternByUser: PatternType | null;
	readonly notes: string;
	/** Care instructions, free text. */
	readonly care: string;
	/** ISO 8601 instants. */
	readonly addedAt: string;
	readonly changedAt: string;
};

/** A garment with the colours its photos give; what every judgement takes. */
export type Garment = GarmentDetails & Appearance;
