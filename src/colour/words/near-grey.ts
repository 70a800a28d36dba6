import { distanceBetween } from '../delta-e-many.ts';
import type { Lab65 } from '../lab65.ts';

/**
 * Distance from the grey of the same lightness (CIEDE2000) under which people call a colour grey, white or black even when it is seen without error:
 * fitted on half of the surveyed centroids in fixtures/colour-words.
 */
const GREY_WITHIN = 4;

/** Black cloth keeps its name with a little more tint than that: under L* 25 (ISCC-NBS's border of black) tints are hard to tell. */
const DARK_UNDER = 25;
const DARK_EXTRA = 2;

/**
 * Share of a photo's stated error by which a true grey may look tinted. Measured: six neutral patches of the chart in 12 real photos; the distance of
 * their colours from grey is under 0.64 of the photo's mean error in four of five.
 */
const TINT_PER_ERROR = 0.64;

/**
 * Whether a colour should be named without a hue: it lies nearer to grey than people or the photo can tell. `error` is the reading's expected
 * error in CIEDE2000 units, 0 for a colour that was chosen, not photographed.
 */
export function isNearGrey(colour: Lab65, error: number): boolean {
	const [L] = colour;
	const least = GREY_WITHIN + (L < DARK_UNDER ? DARK_EXTRA : 0);
	return distanceBetween(colour, [L, 0, 0]) < Math.max(least, TINT_PER_ERROR * error);
}

/** Names of the steps from black to white with the L* under which each ends. */
export type GreyScale = readonly (readonly [word: string, under: number])[];

/**
 * The steps of English. Borders of black, dark, medium and light grey and white: Munsell values 2.5, 4.5, 6.5 and 8.5 of ISCC-NBS (from memory), about
 * ten times that in L*; charcoal ends halfway between the survey's charcoal and its dark grey.
 */
export const ENGLISH_GREYS: GreyScale = [
	['black', 25],
	['charcoal', 32],
	['dark grey', 45],
	['grey', 65],
	['light grey', 85],
	['white', Number.POSITIVE_INFINITY],
];

/** The steps of German, at the same borders. */
export const GERMAN_GREYS: GreyScale = [
	['schwarz', 25],
	['dunkelgrau', 45],
	['grau', 65],
	['hellgrau', 85],
	['weiß', Number.POSITIVE_INFINITY],
];

/** The word of a lightness L* on such a scale. */
export const greyWord = (scale: GreyScale, lightness: number): string =>
	scale.find(([, under]) => lightness < under)![0];
