import { clusterLab } from '../../colour/cluster.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { nthSmallest } from '../../colour/median.ts';
import { medianLab } from '../../colour/median-lab.ts';
import type { Slot } from '../../wardrobe/words/slot.ts';
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

/** `members` are points of the cloth, in their order. */
type Cluster = { readonly lab: Lab65; readonly members: Uint32Array };

/** Side of the cells that like pixels are gathered in before they are clustered: along a* and b*, and along L*, which counts half. */
const CELL = 1.5;
const CELL_L = CELL / LIGHTNESS_WEIGHT;

/** Pixels gathered by colour. */
type Cells = {
	/** Mean colour of each cell, L, a, b triples. */
	readonly means: Float32Array;
	/** Pixels in each cell. */
	readonly counts: Float32Array;
	/** The cell of each pixel. */
	readonly cellOf: Uint32Array;
};

/** A cloth's thousands of pixels lie in hundreds of cells: clustering those, by their weight, gives the same clusters. */
function cellsOf(labs: Float32Array): Cells {
	const cellOf = new Uint32Array(labs.length / 3);
	const sums = new Float64Array(labs.length);
	const counts = new Float32Array(cellOf.length);
	const cells = new Map<number, number>();
	for (let i = 0; i < cellOf.length; i++) {
		// Every sRGB colour's a* and b* lie within 128 of 0.
		const place =
			(Math.floor(labs[i * 3]! / CELL_L) * 256 + Math.floor(labs[i * 3 + 1]! / CELL) + 128) * 256 +
			Math.floor(labs[i * 3 + 2]! / CELL) +
			128;
		const cell = cells.get(place) ?? cells.size;
		if (cell === cells.size) cells.set(place, cell);
		cellOf[i] = cell;
		counts[cell]!++;
		for (let axis = 0; axis < 3; axis++) sums[cell * 3 + axis]! += labs[i * 3 + axis]!;
	}
	const means = new Float32Array(cells.size * 3);
	for (let i = 0; i < means.length; i++) means[i] = sums[i]! / counts[Math.floor(i / 3)]!;
	return { means, counts: counts.subarray(0, cells.size), cellOf };
}

/** The clusters that a cloth's pixels fall into before any are joined. */
function startClusters(labs: Float32Array): Cluster[] {
	const { means, counts, cellOf } = cellsOf(labs);
	const { centres, labels } = clusterLab(means, counts, START_CLUSTERS, {
		lightnessWeight: LIGHTNESS_WEIGHT,
		maxIterations: 12,
	});
	const sizes = centres.map(() => 0);
	for (let cell = 0; cell < labels.length; cell++) sizes[labels[cell]!]! += counts[cell]!;
	const clusters = centres.map((lab, index) => ({ lab, members: new Uint32Array(sizes[index]!) }));
	const filled = centres.map(() => 0);
	for (let point = 0; point < cellOf.length; point++) {
		const label = labels[cellOf[point]!]!;
		clusters[label]!.members[filled[label]!++] = point;
	}
	return clusters;
}

/** Joins clusters of one cloth, the two nearest first, until none is left to join. */
function joinCloths(labs: Float32Array, clusters: readonly Cluster[]): Cluster[] {
	let joined = [...clusters];
	for (;;) {
		let best: { a: number; b: number; distance: number } | null = null;
		for (let a = 0; a < joined.length; a++) {
			for (let b = a + 1; b < joined.length; b++) {
				const [one, other] = [joined[a]!.lab, joined[b]!.lab];
				const distance = Math.hypot((one[0] - other[0]) * LIGHTNESS_WEIGHT, one[1] - other[1], one[2] - other[2]);
				if ((best && distance >= best.distance) || !isOneCloth(labs, one, other)) continue;
				best = { a, b, distance };
			}
		}
		if (!best) return joined;
		const { a, b } = best;
		const members = new Uint32Array(joined[a]!.members.length + joined[b]!.members.length);
		members.set(joined[a]!.members);
		members.set(joined[b]!.members, joined[a]!.members.length);
		joined = [...joined.filter((_, index) => index !== a && index !== b), { lab: meanOf(labs, members), members }];
	}
}

function meanOf(labs: Float32Array, members: Uint32Array): Lab65 {
	let [L, a, b] = [0, 0, 0];
	for (const member of members) {
		L += labs[member * 3]!;
		a += labs[member * 3 + 1]!;
		b += labs[member * 3 + 2]!;
	}
	return [L / members.length, a / members.length, b / members.length];
}

/** Share of a cloth's darkest pixels that are left out of its colour: shadow only darkens. */
const SHADOW_PART = 0.2;

/** The colour of the lit part: the median of each coordinate over all but the darkest pixels. */
function litColour(labs: Float32Array, members: Uint32Array): Lab65 {
	const lightness = new Float64Array(members.length);
	for (let i = 0; i < members.length; i++) lightness[i] = labs[members[i]! * 3]!;
	const darkest = nthSmallest(lightness, Math.floor(members.length * SHADOW_PART));
	const lit = new Float32Array(members.length * 3);
	let end = 0;
	for (let i = 0; i < members.length; i++) {
		const from = members[i]! * 3;
		if (labs[from]! < darkest) continue;
		lit[end++] = labs[from]!;
		lit[end++] = labs[from + 1]!;
		lit[end++] = labs[from + 2]!;
	}
	return medianLab(lit.subarray(0, end));
}

function swatchesOfSlot({ labs, slot, area }: ClothPixels, totalArea: number): RawSwatch[] {
	const count = labs.length / 3;
	return joinCloths(labs, startClusters(labs))
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
