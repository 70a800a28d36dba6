import type { Lab65 } from '../../colour/lab65.ts';
import type { Kind } from './kind.ts';
import type { Slot } from './slot.ts';

/** One colour of a photo or garment. */
export type Swatch = {
	/** The cloth's colour after the light correction. */
	readonly lab: Lab65;
	/** Share of the photo's clothing (of the frame for a scene), 0..1; a reading's shares sum to 1. */
	readonly share: number;
	/** Where it is worn; `null` for a scene. */
	readonly slot: Slot | null;
	/** Systematic ISCC-NBS name. */
	readonly name: string;
};

/** What the photo shows: clothes on a person, one garment by itself, or neither. */
export type PhotoKind = 'worn' | 'single' | 'scene';

export const PATTERN_TYPES = ['plain', 'striped', 'checked', 'printed', 'mottled'] as const;
export type PatternType = (typeof PATTERN_TYPES)[number];

/** Pattern of the cloth. `mottled` = melange, tweed, denim. */
export type Pattern = {
	readonly type: PatternType;
	/** Probability that `type` is right, 0..1. */
	readonly sure: number;
	/** Direction in which stripes run, degrees 0 (horizontal) .. <180, counter-clockwise; absent where not found. */
	readonly directionDegrees?: number;
	/** Distance of one repeat in pixels of the upright picture; absent where not found. */
	readonly periodPx?: number;
};

/** Where the light correction came from, strongest first. */
export const LIGHT_SOURCES = ['by-hand', 'neutral-pointed', 'neutral-found', 'group', 'estimate', 'none'] as const;

/** The light the photo was taken in, and what was done about it. */
export type Light = {
	readonly source: (typeof LIGHT_SOURCES)[number];
	/** Colour that a neutral surface has in the uncorrected photo (L = 100 scale of the brightest white), or null if unknown. */
	readonly cast: Lab65 | null;
	/** How much of the estimated cast was taken out, 0..1. */
	readonly strength: number;
	/** One sentence in plain words. */
	readonly reason: string;
};

/** How far a reading can be believed. */
export type Trust = {
	/** Expected error of a swatch, CIEDE2000 units; covers the true error about 80 % of the time. */
	readonly error: number;
	/** Why, in plain words, the weightiest first. */
	readonly reasons: readonly string[];
	/** What would help most, or null when nothing needs doing. */
	readonly advice: string | null;
};

/** What the photo pipeline says of one photo. Deterministic: same bytes and correction, same reading. */
export type Reading = {
	readonly photoKind: PhotoKind;
	/** Corrected swatches, heaviest first. */
	readonly swatches: readonly Swatch[];
	/** The same swatches before the light correction, index by index. */
	readonly uncorrected: readonly Lab65[];
	/** Suggested kinds for a single garment, likeliest first; empty unless `photoKind` is `single`. */
	readonly kindGuesses: readonly { readonly kind: Kind; readonly probability: number }[];
	readonly pattern: Pattern;
	/** Pattern of each slot seen (for style profiles); the whole clothing's when only one slot is seen. */
	readonly patternBySlot: Readonly<Partial<Record<Slot, Pattern>>>;
	readonly light: Light;
	readonly trust: Trust;
	/** Median colour of what is neither clothes nor person, uncorrected: the bed or floor; null for a scene or where nothing of it is seen. */
	readonly background: Lab65 | null;
	/** Upright picture size in pixels. */
	readonly widthPx: number;
	readonly heightPx: number;
	/** EXIF date, ISO 8601 local without zone, or null. */
	readonly takenAt: string | null;
};

/** What the user told the program about one photo. All optional; removing an entry undoes it. */
export type Correction = {
	/** A point that is neutral in truth: pixels of the upright picture and its CIELAB lightness (95 = white paper). */
	readonly neutral?: { readonly x: number; readonly y: number; readonly lightness: number };
	/** Steps by hand: warmer (+) / cooler (-) and lighter (+) / darker (-), each -10..10. */
	readonly byHand?: { readonly warmer: number; readonly lighter: number };
	/** Name of the "same light" group this photo was put in; photos of one group share one correction. */
	readonly lightGroup?: string;
	/** True where a corrected mask is kept with the photo; it wins over the parser's outline. */
	readonly mask?: boolean;
};

/** The colours and pattern of a garment, wish or candidate, as the judgements need them. */
export type Appearance = {
	readonly swatches: readonly Swatch[];
	readonly pattern: Pattern;
	readonly trust: Trust;
};
