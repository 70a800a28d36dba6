import { clusterLab } from '../../colour/cluster.ts';
import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { ClothPixels } from './cloth-pixels.ts';
import type { RawSwatch } from './swatches.ts';

/** Colours of a scene: as many as a photo adds to a palette. */
const SCENE_COLOURS = 8;
/** Less of a colour than this share of the frame is a speck. */
const LEAST_SHARE = 0.01;

/** An accent with no swatch within this (CIEDE2000) is lost. */
const LOST_BEYOND = 10;

/**
 * The colours of a picture with neither garment nor person: plain clusters of its whole frame. Where they lose one of the `accents`, they start
 * from it. Heaviest first, shares summing to 1; fewer where the picture has fewer colours, none without pixels.
 */
export function sceneSwatches({ labs }: ClothPixels, accents: readonly Lab65[]): RawSwatch[] {
	const plain = clusterLab(labs, null, SCENE_COLOURS);
	const lost = accents.filter((accent) => !plain.centres.some((lab) => liesWithin(lab, accent, LOST_BEYOND)));
	const { centres, shares } = lost.length > 0 ? clusterLab(labs, null, SCENE_COLOURS, { seeds: lost }) : plain;
	const kept = centres.flatMap((lab, index) => (shares[index]! >= LEAST_SHARE ? [{ lab, share: shares[index]! }] : []));
	const whole = kept.reduce((sum, { share }) => sum + share, 0);
	return kept.map(({ lab, share }) => ({ lab, share: share / whole, slot: null }));
}
