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

/** The mean of a field over the square around each cell, of the cells that count alone. */
function blurred({ width, height, cells }: Patch, field: Field, radius: number): Field {
	const stride = width + 1;
	const sums = new Float64Array(stride * (height + 1));
	const counts = new Float64Array(sums.length);
	for (const cell of cells) {
		const at = (Math.floor(cell / width) + 1) * stride + (cell % width) + 1;
		sums[at] = field[cell]!;
		counts[at] = 1;
	}
	for (const table of [sums, counts]) {
		for (let at = stride + 1; at < table.length; at++) {
			if (at % stride === 0) continue;
			table[at]! += table[at - 1]! + table[at - stride]! - table[at - stride - 1]!;
		}
	}
	const out = new Float32Array(field.length);
	for (const cell of cells) {
		const [x, y] = [cell % width, Math.floor(cell / width)];
		const [left, right] = [Math.max(0, x - radius), Math.min(width, x + radius + 1)];
		const [top, bottom] = [Math.max(0, y - radius) * stride, Math.min(height, y + radius + 1) * stride];
		const within = (table: Float64Array) =>
			table[bottom + right]! - table[top + right]! - table[bottom + left]! + table[top + left]!;
		out[cell] = within(sums) / within(counts);
	}
	return out;
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Logarithm (base 2) of the change, in stops, between two fields that this share of the cells stays below. */
function changeOf(cells: readonly number[], one: Field, other: Field, share: number): number {
	const changes = Float64Array.from(cells, (cell) => Math.abs(one[cell]! - other[cell]!));
	return Math.log2(nthSmallest(changes, Math.floor(share * (cells.length - 1))) + NOISE);
}

/** Whether what stands out is dark, as joints between light tiles (below 0), or light. */
function skewOf(cells: readonly number[], one: Field, other: Field): number {
	const changes = Float64Array.from(cells, (cell) => one[cell]! - other[cell]!);
	const [low, middle, high] = [0.03, 0.5, 0.97].map((share) =>
		nthSmallest(changes, Math.floor(share * (cells.length - 1))),
	) as [number, number, number];
	return Math.log2((high - middle + 0.01) / (middle - low + 0.01));
}

/**
 * How a ground changes from place to place, 11 numbers: how much its brightness changes (mean over five sizes of the logarithm of the stops that half of
 * it stays below), by how much more at each size than at the next smaller one (4), how much further its strongest changes go (nine tenths instead of
 * half), how much redness and blueness change at two sizes compared with that (4), and whether dark or light things stand out. Two places after the point.
 */
export function textureOf(patch: Patch, { redness, blueness, brightness }: GroundFields): number[] {
	const { cells } = patch;
	const levels = [brightness, ...RADII.map((radius) => blurred(patch, brightness, radius))];
	const usual = RADII.map((_, at) => changeOf(cells, levels[at]!, levels[at + 1]!, 0.5));
	const strong = RADII.map((_, at) => changeOf(cells, levels[at]!, levels[at + 1]!, 0.9));
	const level = meanOf(usual);
	const coloured = [redness, blueness].flatMap((field) => {
		const [fine, middle, coarse] = [2, 8, 16].map((radius) => blurred(patch, field, radius));
		return [changeOf(cells, fine!, middle!, 0.7) - level, changeOf(cells, middle!, coarse!, 0.7) - level];
	});
	return [
		level,
		...usual.slice(1).map((change, at) => change - usual[at]!),
		meanOf(strong) - level,
		...coloured,
		skewOf(cells, levels[0]!, levels[3]!),
	].map((value) => Math.round(100 * value) / 100);
}
