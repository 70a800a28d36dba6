import type { Lab65 } from '../../colour/lab65.ts';
import type { Kind } from './kind.ts';
import type { CameraKind, Light, LightModel } from './light.ts';
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

/** How far a reading can be believed. */
export type Trust = {
	/** Expected error of a swatch, CIEDE2000 units; covers the true error about 80 % of the time. */
	readonly error: number;
	/** Why, in plain words, the weightiest first. */
	readonly reasons: readonly string[];
	/** What would help most, or null when nothing needs doing. */
	readonly advice: string | null;
	/** True where nothing tells the light: then lightness errs most by far, and counts less where two photos are compared. */
	readonly untold?: boolean;
};

/** What of a photo, besides its lamp, can spoil the colour of the clothes in it. */
export type PhotoQuality = {
	/** Clothes as a share of the frame, 0..1. */
	readonly clothesShare: number;
	/** Share of the clothes' pixels clipped in at least one channel: burnt out, or a colour beyond what the file can hold. */
	readonly clippedShare: number;
	/** Encoded luminance 0..1 that the brightest hundredth of the frame reaches: low = underexposed. */
	readonly brightest: number;
	/** Step between neighbours that one pixel in two hundred exceeds, as a share of the range: low for a blurred picture. */
	readonly sharpness: number;
};

/** The bed, floor or wall that clothes lie on or hang before, as one photo sees it. */
export type SeenGround = {
	/** Its colour where it is lit, uncorrected. */
	readonly lab: Lab65;
	/** Share of the frame, 0..1. */
	readonly share: number;
	/** How it changes from place to place: numbers that lamp and exposure hardly touch (`textureOf`). */
	readonly texture: readonly number[];
};

/** What is made of a point that the user calls neutral. */
export type NeutralJudgement = {
	/** Taken; taken for now, with a question; or not taken. */
	readonly answer: 'taken' | 'asked' | 'refused';
	/** What it was taken for, or would be. */
	readonly kind: 'white' | 'grey';
	/** Why, in plain words, and what to do where it was not simply taken. */
	readonly sentence: string;
	/** What the photo's colours would go through by this neutral alone, also where it was refused: to be looked at, before and after. */
	readonly model: LightModel;
};

/** A kind that a piece may be, with its probability, 0..1. */
export type LikelyKind = { readonly kind: Kind; readonly probability: number };

/** One worn thing that a picture shows. */
export type Piece = {
	/** The slot it is worn in: a cardigan over a shirt lies in `outer`. */
	readonly slot: Slot;
	/** What it is, where that is sure enough to be said or the user told it; null = one of `kinds`. */
	readonly kind: Kind | null;
	/** What it may be, likeliest first; empty where only its slot is known. */
	readonly kinds: readonly LikelyKind[];
	/** Share of the frame, 0..1. */
	readonly share: number;
	readonly pattern: Pattern;
	/** Its colours, heaviest first; shares sum to 1 over the piece. At least one. */
	readonly swatches: readonly Pick<Swatch, 'lab' | 'share' | 'name'>[];
};

/** A part of a picture: its edges as shares of width and height from the left and from the top, 0..1. */
export type PictureBox = {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
};

/** What a photo without a person may be cut into, each part a photo of its own. */
export type SplitProposal = {
	/** Separate pieces seen, 2 or more: a pair of shoes is one. */
	readonly pieces: number;
	/** A box round each part; where more than two pieces are seen, one part holds the others. */
	readonly boxes: readonly [PictureBox, PictureBox];
};

/** What the photo pipeline says of one photo. Deterministic: same bytes and correction, same reading. */
export type Reading = {
	readonly photoKind: PhotoKind;
	/** Corrected swatches, heaviest first. */
	readonly swatches: readonly Swatch[];
	/** The same swatches before the light correction, index by index. */
	readonly uncorrected: readonly Lab65[];
	/** Suggested kinds for a single garment, likeliest first; empty unless `photoKind` is `single`. */
	readonly kindGuesses: readonly LikelyKind[];
	readonly pattern: Pattern;
	/** Pattern of each slot seen (for style profiles); the whole clothing's when only one slot is seen. */
	readonly patternBySlot: Readonly<Partial<Record<Slot, Pattern>>>;
	/** What is worn or laid out in the picture, thing by thing, the largest first; absent in older readings and for one garment. */
	readonly pieces?: readonly Piece[];
	/** How the photo may be split, where it shows several garments and nobody who wears them; absent in older readings and for one garment. */
	readonly proposal?: SplitProposal;
	readonly light: Light;
	/** What the photo by itself says of its light, before a group, a ground or the hand; absent in older readings. */
	readonly ownLight?: Light;
	readonly trust: Trust;
	/** What of the photo, besides its light, can spoil the colours; absent in older readings. */
	readonly quality?: PhotoQuality;
	/** What was made of each neutral the user pointed at, in their order; absent where none was. */
	readonly neutrals?: readonly NeutralJudgement[];
	/** Median colour of what is neither clothes nor person, uncorrected: the bed or floor; null for a scene or where nothing of it is seen. */
	readonly background: Lab65 | null;
	/** The ground that one garment lies on or hangs before; null where little is seen of it, absent in older readings and for anything else. */
	readonly ground?: SeenGround | null;
	/** Upright picture size in pixels. */
	readonly widthPx: number;
	readonly heightPx: number;
	/** EXIF date, ISO 8601 local without zone, or null. */
	readonly takenAt: string | null;
};

/** A point that the user calls neutral: pixels of the upright picture. */
export type NeutralPoint = {
	readonly x: number;
	readonly y: number;
	/** CIELAB lightness it has in truth (95 = white paper); without it, decided by how bright it is in the picture. */
	readonly lightness?: number;
	/** The user was asked about it, saw before and after, and said yes. */
	readonly sure?: boolean;
};

/** What the user told the program about one photo. All optional; removing an entry undoes it. */
export type Correction = {
	/** Points that are neutral in truth: white paper, a grey card, or best one of each. */
	readonly neutrals?: readonly NeutralPoint[];
	/** The one neutral of a correction made before there could be two; read as a list of one. */
	readonly neutral?: NeutralPoint;
	/** What took the picture, where the file itself does not say it or says it wrongly. */
	readonly camera?: CameraKind;
	/** Steps by hand: warmer (+) / cooler (-) and lighter (+) / darker (-), each -10..10. */
	readonly byHand?: { readonly warmer: number; readonly lighter: number };
	/** Name of the "same light" group this photo was put in; photos of one group share one correction. */
	readonly lightGroup?: string;
	/** Word that all photos of one ground share, null for a ground that no other photo shows; without it, by how it looks. */
	readonly ground?: string | null;
	/** True where a corrected mask is kept with the photo; it wins over the parser's outline. */
	readonly mask?: boolean;
};

/** The neutrals of a correction, whichever way they are kept. */
export const neutralsOf = ({ neutrals, neutral }: Correction): readonly NeutralPoint[] =>
	neutrals ?? (neutral ? [neutral] : []);

/** The colours and pattern of a garment, wish or candidate, as the judgements need them. */
export type Appearance = {
	readonly swatches: readonly Swatch[];
	readonly pattern: Pattern;
	readonly trust: Trust;
};
