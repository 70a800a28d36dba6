import { clusterLab } from '../../colour/cluster.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { ClothPixels } from './cloth-pixels.ts';

/** One plain cluster of the pixels that a reading was made from. */
export type Shade = { readonly lab: Lab65; readonly share: number };

/**
 * The `count` plain k-means clusters in CIELAB of the same pixels that the swatches come from: nothing merged, nothing weighted
 * but by area. For whoever wants the spread, and for measuring the outline.
 */
export function shadesOf(cloths: readonly ClothPixels[], count: number): Shade[] {
	const points = new Float32Array(cloths.reduce((sum, { labs }) => sum + labs.length, 0));
	const weights = new Float32Array(points.length / 3);
	let at = 0;
	for (const { labs, area } of cloths) {
		points.set(labs, at * 3);
		// A sampled pixel stands for more pixels in a large slot than in a small one.
		weights.fill(area / (labs.length / 3), at, at + labs.length / 3);
		at += labs.length / 3;
	}
	const { centres, shares } = clusterLab(points, weights, count);
	return centres.map((lab, index) => ({ lab, share: shares[index]! }));
}
