import { clusterLab } from '../colour/cluster.ts';
import type { Lab65 } from '../colour/lab65.ts';
import { medianOf } from '../colour/median.ts';
import type { Slot } from '../wardrobe/slot.ts';
import type { ClothPixels } from './cloth-pixels.ts';
import { isOneCloth } from './one-cloth.ts';

/** One colour of the cloth before the light correction. */
export type RawSwatch = { readonly lab: Lab65; readonly share: number; readonly slot: Slot | null };

/** Clusters to start from: enough for a print of five colours and its shadows. */
const START_CLUSTERS = 8;
/** Lightness counts little while clustering, so that folds and shadows of one cloth stay together. */
const LIGHTNESS_WEIGHT = 0.5;
/** Most swatches of one slot, and the least share of the clothing that one must have. */
const MOST_SWATCHES = 5;
const LEAST_SHARE = 0.03;

type Cluster = { readonly lab: Lab65; readonly members: readonly number[] };

/** Joins clusters of one cloth, the two nearest first, until none is left to join. */
function joinCloths(labs: Float32Array, clusters: readonly Cluster[]): Cluster[] {
	let joined = [...clusters];
	for (;;) {
		let best: { a: number; b: number; distance: number } | null = null;
		for (let a = 0; a < joined.length; a++) {
			for (let b = a + 1; b < joined.length; b++) {
				const [one, other] = [joined[a]!.lab, joined[b]!.lab];
				if (!isOneCloth(labs, one, other)) continue;
				const distance = Math.hypot((one[0] - other[0]) * LIGHTNESS_WEIGHT, one[1] - other[1], one[2] - other[2]);
				if (!best || distance < best.distance) best = { a, b, distance };
			}
		}
		if (!best) return joined;
		const { a, b } = best;
		const members = [...joined[a]!.members, ...joined[b]!.members];
		joined = [...joined.filter((_, index) => index !== a && index !== b), { lab: meanOf(labs, members), members }];
	}
}

function meanOf(labs: Float32Array, members: readonly number[]): Lab65 {
	const sums = [0, 0, 0];
	for (const member of members) for (let axis = 0; axis < 3; axis++) sums[axis]! += labs[member * 3 + axis]!;
	return sums.map((sum) => sum / members.length) as unknown as Lab65;
}

/** Share of a cloth's darkest pixels that are left out of its colour: shadow only darkens. */
const SHADOW_PART = 0.2;

/** The colour of the lit part: the median of each coordinate over all but the darkest pixels. */
function litColour(labs: Float32Array, members: readonly number[]): Lab65 {
	const byLightness = [...members].sort((a, b) => labs[a * 3]! - labs[b * 3]! || a - b);
	const lit = byLightness.slice(Math.floor(byLightness.length * SHADOW_PART));
	const median = (axis: number) => medianOf(lit.map((member) => labs[member * 3 + axis]!));
	return [median(0), median(1), median(2)];
}

function swatchesOfSlot({ labs, slot, area }: ClothPixels, totalArea: number): RawSwatch[] {
	const { centres, labels } = clusterLab(labs, null, START_CLUSTERS, {
		lightnessWeight: LIGHTNESS_WEIGHT,
		maxIterations: 12,
	});
	const clusters = centres.map((lab, index) => ({
		lab,
		members: Array.from(labels.keys()).filter((point) => labels[point] === index),
	}));
	const count = labs.length / 3;
	return joinCloths(labs, clusters)
		.map(({ members }) => ({
			lab: litColour(labs, members),
			share: ((members.length / count) * area) / totalArea,
			slot,
		}))
		.sort((a, b) => b.share - a.share)
		.slice(0, MOST_SWATCHES);
}

/**
 * The cloth colours of a photo, heaviest first, shares summing to 1. Folds and shadows of one cloth are one swatch; at most 5 a slot,
 * and none under 3 % of the clothing unless it is a slot's only one. Empty for no pixels.
 */
export function swatchesOf(cloths: readonly ClothPixels[]): RawSwatch[] {
	const totalArea = cloths.reduce((sum, { area }) => sum + area, 0);
	const kept = cloths.flatMap((cloth) =>
		swatchesOfSlot(cloth, totalArea).filter(
			({ share }, index) => share >= LEAST_SHARE || (index === 0 && share >= LEAST_SHARE / 3),
		),
	);
	const whole = kept.reduce((sum, { share }) => sum + share, 0);
	return kept.map((swatch) => ({ ...swatch, share: swatch.share / whole })).sort((a, b) => b.share - a.share);
}
