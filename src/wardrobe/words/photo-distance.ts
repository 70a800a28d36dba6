import { deltaE2000Weighted } from '../../colour/delta-e.ts';
import { distanceBetween } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { Trust } from './reading.ts';

/** How much less lightness counts where the light of one of two photos is told by nothing. */
const UNTOLD_WEIGHT = 2.5;
const untoldDistance = deltaE2000Weighted(UNTOLD_WEIGHT, 1, 1);

/**
 * Distance of two colours of two photos, CIEDE2000 with lightness weighted by what is known of the photos' light. Exposure swings from photo to
 * photo far more than hue: in 8 real phone photos of a chart untouched colours err by 11 in L* and 7 and 9 in a* and b*. Weighted 2.5 times
 * less, the same patch in two photos is told from another one best (area under the curve 0.978, unweighted 0.948); with a neutral in both photos
 * the plain formula does as well as any (0.99). Measured: tests/wardrobe/words/photo-distance.test.ts.
 */
export const distanceAcrossPhotos = (
	one: Lab65,
	other: Lab65,
	trusts: readonly [Pick<Trust, 'untold'>, Pick<Trust, 'untold'>],
): number => (trusts[0].untold || trusts[1].untold ? untoldDistance(one, other) : distanceBetween(one, other));
