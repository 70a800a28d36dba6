import { nthSmallest } from '../../colour/median.ts';

/** A number for each cell of a grid, row by row. */
export type Field = Float32Array;

/** The cells that count, on a grid. */
export type Patch = { readonly width: number; readonly height: number; readonly cells: readonly number[] };

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

/** Means of a field over the square of a radius around each cell that counts, of such cells alone; in the order of `cells`. */
function meansOf(patch: Patch, field: Field): (radius: number) => Field {
	const { width, height, cells } = patch;
	const stride = width + 1;
	const sums = integralOf(patch, (cell) => field[cell]!);
	const counts = integralOf(patch, () => 1);
	return (radius) =>
		Float32Array.from(cells, (cell) => {
			const [x, y] = [cell % width, Math.floor(cell / width)];
			const [left, right] = [Math.max(0, x - radius), Math.min(width, x + radius + 1)];
			const [top, bottom] = [Math.max(0, y - radius) * stride, Math.min(height, y + radius + 1) * stride];
			const within = (table: Float64Array) =>
				table[bottom + right]! - table[top + right]! - table[bottom + left]! + table[top + left]!;
			return within(sums) / within(counts);
		});
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Logarithm (base 2) of the change, in stops, between two lists that this share of it stays below. */
function changeOf(one: Field, other: Field, share: number): number {
	const changes = one.map((value, at) => Math.abs(value - other[at]!));
	return Math.log2(nthSmallest(changes, Math.floor(share * (one.length - 1))) + NOISE);
}

/** Whether what stands out is dark, as joints between light tiles (below 0), or light. */
function skewOf(one: Field, other: Field): number {
	const changes = one.map((value, at) => value - other[at]!);
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
	const bright = meansOf(patch, brightness);
	const levels = [Float32Array.from(patch.cells, (cell) => brightness[cell]!), ...RADII.map(bright)];
	const changes = (share: number) => RADII.map((_, at) => changeOf(levels[at]!, levels[at + 1]!, share));
	const usual = changes(0.5);
	const level = meanOf(usual);
	const coloured = [redness, blueness].flatMap((field) => {
		const [fine, middle, coarse] = [2, 8, 16].map(meansOf(patch, field));
		return [changeOf(fine!, middle!, 0.7) - level, changeOf(middle!, coarse!, 0.7) - level];
	});
	return [
		level,
		...usual.slice(1).map((change, at) => change - usual[at]!),
		meanOf(changes(0.9)) - level,
		...coloured,
		skewOf(levels[0]!, levels[3]!),
	].map((value) => Math.round(100 * value) / 100);
}
