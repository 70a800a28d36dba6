import { kmeans } from 'ml-kmeans';
import { greedySeeds } from './cluster-seeds.ts';
import type { Lab65 } from './lab65.ts';

export type Clusters = {
	/** Weighted mean of each cluster, heaviest first. */
	readonly centres: Lab65[];
	/** Share of the whole weight, in the order of `centres`; they sum to 1. */
	readonly shares: number[];
	/** Index into `centres` for each point. */
	readonly labels: Uint8Array;
};

export type ClusterOptions = {
	/** Factor on the lightness axis while distances are measured, 0..1: under 1, folds and shadows of one cloth stay together. Default 1. */
	readonly lightnessWeight?: number;
	/** Most rounds of reassigning, default 40 (measured: photos settle in 10 to 30). */
	readonly maxIterations?: number;
	/** Colours to start from besides the greedy seeds; they count among the `k`. Default none. */
	readonly seeds?: readonly Lab65[];
};

/** Squared move of a centre under which the rounds stop: 0.01 in CIELAB, a hundredth of a visible difference. */
const SETTLED = 1e-4;

/** Weighted mean of the points of each cluster in the unscaled space; a cluster without weight keeps NaN and is dropped by the caller. */
function weightedCentres(points: Float32Array, weights: Float32Array | null, labels: readonly number[], k: number) {
	const sums = new Float64Array(k * 4);
	for (let i = 0; i < labels.length; i++) {
		const weight = weights ? weights[i]! : 1;
		const at = labels[i]! * 4;
		sums[at]! += weight * points[i * 3]!;
		sums[at + 1]! += weight * points[i * 3 + 1]!;
		sums[at + 2]! += weight * points[i * 3 + 2]!;
		sums[at + 3]! += weight;
	}
	return Array.from({ length: k }, (_, cluster) => {
		const weight = sums[cluster * 4 + 3]!;
		const mean = [0, 1, 2].map((axis) => sums[cluster * 4 + axis]! / weight) as [number, number, number];
		return { mean, weight };
	});
}

const bySizeThenColour = (
	one: { readonly mean: readonly number[]; readonly weight: number },
	other: { readonly mean: readonly number[]; readonly weight: number },
) =>
	other.weight - one.weight ||
	one.mean[0]! - other.mean[0]! ||
	one.mean[1]! - other.mean[1]! ||
	one.mean[2]! - other.mean[2]!;

/**
 * At most `k` clusters of CIELAB points (L, a, b triples) with optional weights per point: fewer where there are fewer distinct
 * colours, none without points or without weight. Deterministic: same input, same numbers.
 *
 * ml-kmeans knows no weights, and its kmeans++ starts from chance. So it is given the centres (greedy seeds, then the weighted
 * means) and asked for one assignment at a time; the weighted mean between two assignments is taken here. That is exactly
 * Lloyd's weighted k-means, where repeating points by their weight would only come near it and cost more.
 */
export function clusterLab(
	points: Float32Array,
	weights: Float32Array | null,
	k: number,
	options: ClusterOptions = {},
): Clusters {
	const { lightnessWeight = 1, maxIterations = 40, seeds: given = [] } = options;
	if (points.length % 3 !== 0) throw new RangeError('Expected whole L, a, b triples.');
	if (!(k >= 1 && k <= 256)) throw new RangeError(`Expected 1 to 256 clusters; received ${k}.`);
	const count = points.length / 3;
	const scaled: number[][] = [];
	for (let i = 0; i < count; i++)
		scaled.push([points[i * 3]! * lightnessWeight, points[i * 3 + 1]!, points[i * 3 + 2]!]);
	const scale = ([L, a, b]: readonly [number, number, number]): [number, number, number] => [L * lightnessWeight, a, b];
	const packed = new Float64Array(points);
	for (let i = 0; i < packed.length; i += 3) packed[i]! *= lightnessWeight;
	const even = () => new Float64Array(count).fill(1);
	const starts = given.slice(0, k).map(scale);
	const first = greedySeeds(packed, weights ? new Float64Array(weights) : even(), k, starts);
	if (first.length + starts.length === 0 || count === 0)
		return { centres: [], shares: [], labels: new Uint8Array(count) };

	let seeds = [...starts, ...first.map((index) => [...scaled[index]!])];
	let labels: readonly number[] = [];
	let clusters: ReturnType<typeof weightedCentres> = [];
	for (let round = 0; round < maxIterations; round++) {
		labels = kmeans(scaled, seeds.length, { initialization: seeds, maxIterations: 1 }).clusters;
		clusters = weightedCentres(points, weights, labels, seeds.length);
		const next = clusters.map(({ mean, weight }, index) => (weight > 0 ? scale(mean) : seeds[index]!));
		const moved = next.some((centre, index) =>
			centre.some((value, axis) => (value - seeds[index]![axis]!) ** 2 > SETTLED),
		);
		seeds = next;
		if (!moved) break;
	}

	const kept = clusters.map((cluster, index) => ({ ...cluster, index })).filter(({ weight }) => weight > 0);
	kept.sort(bySizeThenColour);
	const place = new Uint8Array(seeds.length);
	for (const [position, { index }] of kept.entries()) place[index] = position;
	const total = kept.reduce((sum, { weight }) => sum + weight, 0);
	const placed = new Uint8Array(labels.length);
	for (let i = 0; i < placed.length; i++) placed[i] = place[labels[i]!]!;
	return {
		centres: kept.map(({ mean }) => mean),
		shares: kept.map(({ weight }) => weight / total),
		labels: placed,
	};
}
