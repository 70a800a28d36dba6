import { nthSmallest } from '../../colour/median.ts';

/** A number for each cell of a grid, row by row. */
export type Field = Float32Array;

/** The cells that count, on a grid. */
export type Patch = { readonly width: number; readonly height: number; readonly cells: Int32Array };

/** How red, blue and bright each cell is, in stops: differences of them stay what they are under another lamp or exposure. */
export type GroundFields = { readonly redness: Field; readonly blueness: Field; readonly brightness: Field };

/** Means over squares of these radii, in cells, each compared with the next: the sizes that grain, joints and folds have. */
const RADII = [1, 2, 4, 8, 16] as const;
/** Less change than this, in stops, is noise. */
const NOISE = 0.004;

/** Sums over all rectangles from the upper left corner, one row and one column wider than the grid. */
function integralOf({ width, height, cells }: Patch, of: (cell: number) => number): Float64Array {
	const stride = width + 1;
	const sums = new Float64Array(stride * (height + 1));
	for (const cell of cells) sums[(Math.floor(cell / width) + 1) * stride + (cell % width) + 1] = of(cell);
	for (let row = stride; row < sums.length; row += stride) {
		let along = 0;
		for (let at = row + 1; at < row + stride; at++) {
			along += sums[at]!;
			sums[at] = along + sums[at - stride]!;
		}
	}
	return sums;
}

/** The values of a field at these places, in their order. */
export function valuesAt(field: Field, places: Int32Array): Field {
	const values = new Float32Array(places.length);
	for (let at = 0; at < places.length; at++) values[at] = field[places[at]!]!;
	return values;
}

/** Means of a field over the square of a radius around each cell that counts, of such cells alone; in the order of `cells`. */
function meansOf(patch: Patch, field: Field, counts: Float64Array): (radius: number) => Field {
	const { width, height, cells } = patch;
	const stride = width + 1;
	const sums = integralOf(patch, (cell) => field[cell]!);
	return (radius) => {
		const means = new Float32Array(cells.length);
		for (let at = 0; at < cells.length; at++) {
			const cell = cells[at]!;
			const y = Math.floor(cell / width);
			const x = cell - y * width;
			const left = Math.max(0, x - radius);
			const right = Math.min(width, x + radius + 1);
			const top = Math.max(0, y - radius) * stride;
			const bottom = Math.min(height, y + radius + 1) * stride;
			const sum = sums[bottom + right]! - sums[top + right]! - sums[bottom + left]! + sums[top + left]!;
			const count = counts[bottom + right]! - counts[top + right]! - counts[bottom + left]! + counts[top + left]!;
			means[at] = sum / count;
		}
		return means;
	};
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** How far two lists differ, place by place. */
function differences(one: Field, other: Field): Field {
	const apart = new Float32Array(one.length);
	for (let at = 0; at < one.length; at++) apart[at] = one[at]! - other[at]!;
	return apart;
}

/** Logarithms (base 2) of the change, in stops, between two lists that these shares of it stay below. */
function changesOf(one: Field, other: Field, shares: readonly number[]): number[] {
	const apart = differences(one, other);
	for (let at = 0; at < apart.length; at++) apart[at] = Math.abs(apart[at]!);
	return shares.map((share) => Math.log2(nthSmallest(apart, Math.floor(share * (apart.length - 1))) + NOISE));
}

/** Whether what stands out is dark, as joints between light tiles (below 0), or light. */
function skewOf(one: Field, other: Field): number {
	const changes = differences(one, other);
	const [low, middle, high] = [0.03, 0.5, 0.97].map((share) =>
		nthSmallest(changes, Math.floor(share * (one.length - 1))),
	) as [number, number, number];
	return Math.log2((high - middle + 0.01) / (middle - low + 0.01));
}

/**
 * How a ground changes from place to place, 11 numbers: how much its brightness changes (mean over five sizes of the logarithm of the stops that half of
 * it stays below), by how much more at each size than at the next smaller one (4), how much further its strongest changes go (nine tenths instead of
 * half), how much redness and blueness change at two sizes compared with that (4), and whether dark or light things stand out. Two places after the point.
 */
export function textureOf(patch: Patch, { redness, blueness, brightness }: GroundFields): number[] {
	const counts = integralOf(patch, () => 1);
	const levels = [valuesAt(brightness, patch.cells), ...RADII.map(meansOf(patch, brightness, counts))];
	const bright = RADII.map((_, at) => changesOf(levels[at]!, levels[at + 1]!, [0.5, 0.9]));
	const usual = bright.map(([half]) => half!);
	const level = meanOf(usual);
	const coloured = [redness, blueness].flatMap((field) => {
		const [fine, middle, coarse] = [2, 8, 16].map(meansOf(patch, field, counts));
		return [...changesOf(fine!, middle!, [0.7]), ...changesOf(middle!, coarse!, [0.7])].map((change) => change - level);
	});
	return [
		level,
		...usual.slice(1).map((change, at) => change - usual[at]!),
		meanOf(bright.map(([, strong]) => strong!)) - level,
		...coloured,
		skewOf(levels[0]!, levels[3]!),
	].map((value) => Math.round(100 * value) / 100);
}
