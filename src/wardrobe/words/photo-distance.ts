import { deltaE2000Weighted } from '../../colour/delta-e.ts';
import { deltaE2000Of, distanceBetween } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { Trust } from './reading.ts';

/** How much less lightness counts where the light of one of two photos is told by nothing. */
const UNTOLD_WEIGHT = 2.5;
const untoldDistance = deltaE2000Weighted(UNTOLD_WEIGHT, 1, 1);

/**
 * Distance of two colours of two photos, CIEDE2000. Where nothing tells the light of one of them, lightness counts less: exposure swings from photo
 * to photo far more than hue. Measured: tests/wardrobe/words/photo-distance.test.ts, figures in bench/NOTES.md, Colours of two photos.
 */
export const distanceAcrossPhotos = (
	one: Lab65,
	other: Lab65,
	trusts: readonly [Pick<Trust, 'untold'>, Pick<Trust, 'untold'>],
): number => (trusts[0].untold || trusts[1].untold ? untoldDistance(one, other) : distanceBetween(one, other));

/**
 * How much less lightness counts where such a photo is held against a palette colour, which many pictures agree on. Measured: bench/NOTES.md, Colours
 * of two photos.
 */
const UNTOLD_AGAINST_PALETTE = 1.3;

/** Distance of a photo's colour to a palette colour, CIEDE2000, lightness weighted by what is known of the photo's light. */
export const distanceToPalette = (seen: Lab65, agreed: Lab65, untold: boolean): number =>
	deltaE2000Of(seen[0], seen[1], seen[2], agreed[0], agreed[1], agreed[2], untold ? UNTOLD_AGAINST_PALETTE : 1);

/**
 * How much less lightness counts where two garments, or one and what a picture wears, are asked whether they echo each other, and the light of one is not told. 1,496 real
 * garments photographed again twice, lightness erring by 9 and tints by 3 and a seventh of the chroma (as 8 phone photos of a chart do): what a picture shows is
 * found again best at 1.6 (F1 0.68, plain 0.60), and a pair once said changes in 58 of 100 cases instead of 70; echoes in 76 instead of 84. Beyond 2 too much is the same.
 */
const UNTOLD_AMONG_PAIRS = 1.6;

/** The weight of lightness (kL of CIEDE2000) between two colours, by whether the light of either photo is told by nothing. */
export const pairLightnessWeight = (...untold: readonly (boolean | undefined)[]): number =>
	untold.some(Boolean) ? UNTOLD_AMONG_PAIRS : 1;
