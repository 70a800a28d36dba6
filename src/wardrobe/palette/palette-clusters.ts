import { clusterLab } from '../../colour/cluster.ts';
import { distanceBetween, liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { type PoolPoint, splitNeutrals } from './palette-pool.ts';

/** A colour found in the pool, before it is named and given its role. */
export type PaletteCluster = {
	readonly lab: Lab65;
	/** Summed weight of its points; a photo's points sum to 1. */
	readonly weight: number;
	/** Weighted median CIEDE2000 of its points to the centre. */
	readonly spread: number;
	readonly neutral: boolean;
};

/** Two centres this near are one colour, not two (CIEDE2000 3: up to there a swatch counts as the palette colour itself). */
const ONE_COLOUR_WITHIN = 3;

/** Weighted median of the points' distances to `centre`; 0 for none. */
function spreadAround(centre: Lab65, points: readonly PoolPoint[]): number {
	const byDistance = points
		.map(({ lab, weight }) => ({ distance: distanceBetween(lab, centre), weight }))
		.sort((one, other) => one.distance - other.distance);
	const half = byDistance.reduce((sum, { weight }) => sum + weight, 0) / 2;
	let passed = 0;
	for (const { distance, weight } of byDistance) {
		passed += weight;
		if (passed >= half) return distance;
	}
	return 0;
}

/** The point with the least weighted distance to all others: their middle, and a colour that a picture really holds. First of equals. */
function medoidOf(points: readonly PoolPoint[]): Lab65 {
	const costs = points.map(({ lab }) =>
		points.reduce((sum, other) => sum + other.weight * distanceBetween(lab, other.lab), 0),
	);
	return points[costs.indexOf(Math.min(...costs))]!.lab;
}

/** A picture holds a colour when one of its own is the same to the eye (CIEDE2000; the "same colour" of the outfits that were measured). */
const HELD_WITHIN = 5;

/**
 * The mean where some picture holds it. The mean of rust and honey is an orange that nobody wears, and would vouch for orange clothes:
 * where no point is the same colour as the mean, the points' own middle takes its place.
 */
const centreHeld = (mean: Lab65, points: readonly PoolPoint[]): Lab65 =>
	points.some(({ lab }) => liesWithin(lab, mean, HELD_WITHIN)) ? mean : medoidOf(points);

/** At most `count` clusters of the points, by weighted k-means in CIELAB; fewer where some would be one colour. */
function clustersOf(points: readonly PoolPoint[], count: number, neutral: boolean): PaletteCluster[] {
	for (let k = Math.min(count, points.length); k > 0; k--) {
		const { centres: means, labels } = clusterLab(
			Float32Array.from(points.flatMap(({ lab }) => [...lab])),
			Float32Array.from(points, ({ weight }) => weight),
			k,
		);
		const members = means.map((_, index) => points.filter((__, point) => labels[point] === index));
		const centres = means.map((mean, index) => centreHeld(mean, members[index]!));
		const twice = centres.some((one, index) =>
			centres.slice(index + 1).some((other) => distanceBetween(one, other) < ONE_COLOUR_WITHIN),
		);
		if (twice) continue;
		return centres.map((lab, index) => ({
			lab,
			weight: members[index]!.reduce((sum, { weight }) => sum + weight, 0),
			spread: spreadAround(lab, members[index]!),
			neutral,
		}));
	}
	return [];
}

/** The colours of a pool: at most `baseCount` neutral and `colourCount` coloured ones, clustered apart. */
export function paletteClusters(pool: readonly PoolPoint[], baseCount: number, colourCount: number): PaletteCluster[] {
	const { neutral, coloured } = splitNeutrals(pool);
	return [...clustersOf(neutral, baseCount, true), ...clustersOf(coloured, colourCount, false)];
}
