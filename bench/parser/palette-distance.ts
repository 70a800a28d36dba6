import { clusterLab } from '../../src/colour/cluster.ts';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { isClothes, type LabelMap, type Pixels } from '../../src/reading/pixels.ts';
import { clothPixels, framePixels, insideClothes, sampleOf } from '../../src/reading/swatches/cloth-pixels.ts';
import { type Shade, shadesOf } from '../../src/reading/swatches/shades.ts';
import { earthMoversDistance } from '../../tests/support/earth-movers-distance.ts';

/** Shades a palette is made of here: the more, the nearer to the pixels themselves. */
const SHADES = 6;
/** Clusters that stand for the true pixels. */
const TRUE_CLUSTERS = 32;

function distance(from: readonly Shade[], to: readonly Shade[]): number {
	const cost = from.map(({ lab }) => Float64Array.from(to, (other) => deltaE2000(lab, other.lab)));
	return earthMoversDistance(
		from.map(({ share }) => share),
		to.map(({ share }) => share),
		cost,
	);
}

/** The true clothing pixels in few clusters, or null where the photo has none. */
function trueColours(pixels: Pixels, truth: LabelMap): Shade[] | null {
	const marks = truth.classes.map((label) => (isClothes(label) ? 1 : 0));
	const { labs, area } = sampleOf(pixels, marks, 1, null);
	if (area === 0) return null;
	const { centres, shares } = clusterLab(labs, null, TRUE_CLUSTERS);
	return centres.map((lab, index) => ({ lab, share: shares[index]! }));
}

/**
 * Earth mover's distance (CIEDE2000 as cost) from the shades to the true clothing pixels: for the outline taken, and for the true one, which
 * is the best to be had. Without clothes in the outline the whole frame counts, as in a scene. Null where the photo shows no clothes.
 */
export function paletteDistances(
	pixels: Pixels,
	truth: LabelMap,
	taken: LabelMap,
): { readonly taken: number; readonly best: number } | null {
	const colours = trueColours(pixels, truth);
	if (!colours) return null;
	const cloths = clothPixels(pixels, insideClothes(taken));
	return {
		taken: distance(shadesOf(cloths.length > 0 ? cloths : [framePixels(pixels)], SHADES), colours),
		best: distance(shadesOf(clothPixels(pixels, insideClothes(truth)), SHADES), colours),
	};
}
