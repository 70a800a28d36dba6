import { labFromPixels } from '../colour/lab-pixels.ts';
import type { Lab65 } from '../colour/lab65.ts';
import { BACKGROUND, type LabelMap, type Pixels, visiblePixels } from './pixels.ts';

/** A patch of background of one even colour. */
export type EvenRegion = {
	/** Mean colour of its inner pixels. */
	readonly lab: Lab65;
	/** Share of the frame. */
	readonly areaShare: number;
	/** Its area as a share of the smallest turned rectangle around it, 0..1: 1 for a sheet of paper. */
	readonly fill: number;
	/** Longer side by shorter side of that rectangle. */
	readonly aspect: number;
	/** Root mean square of its pixels' distance from the mean colour (CIELAB, Euclid). */
	readonly unevenness: number;
	/** Share of its pixels that lie on the frame's border. */
	readonly onBorder: number;
	/** Middle of the region, pixels of the picture. */
	readonly x: number;
	readonly y: number;
};

/** Longest side of the grid that regions are grown on: a sheet beside a garment is still 15 cells wide. */
const GRID_SIDE = 200;
/** Largest step between neighbouring cells, and largest distance from the region's mean, within one sheet of paper in uneven light. */
const LARGEST_STEP = 3;
const LARGEST_DISTANCE = 8;
/** Regions smaller than this share of the frame are crumbs. */
const LEAST_AREA = 0.004;

type Grid = {
	readonly width: number;
	readonly height: number;
	readonly labs: Float32Array;
	readonly free: Uint8Array;
	readonly scale: number;
};

/** The background averaged over square cells; a cell with anything else in it is taken. */
function gridOf(pixels: Pixels, labels: LabelMap): Grid {
	const { widthPx, heightPx, rgb } = pixels;
	const scale = Math.max(1, Math.round(Math.max(widthPx, heightPx) / GRID_SIDE));
	const [width, height] = [Math.floor(widthPx / scale), Math.floor(heightPx / scale)];
	const bytes = new Uint8Array(width * height * 3);
	const free = new Uint8Array(width * height);
	const visible = visiblePixels(pixels);
	for (let row = 0; row < height; row++) {
		for (let column = 0; column < width; column++) {
			const sums = [0, 0, 0];
			let isFree = 1;
			for (let v = 0; v < scale; v++) {
				for (let u = 0; u < scale; u++) {
					const at = (row * scale + v) * widthPx + column * scale + u;
					if (labels.classes[at] !== BACKGROUND || visible[at] === 0) isFree = 0;
					for (let k = 0; k < 3; k++) sums[k]! += rgb[at * 3 + k]!;
				}
			}
			const cell = row * width + column;
			free[cell] = isFree;
			for (let k = 0; k < 3; k++) bytes[cell * 3 + k] = Math.round(sums[k]! / (scale * scale));
		}
	}
	return { width, height, labs: labFromPixels(bytes, 3), free, scale };
}

const distance = (labs: Float32Array, cell: number, mean: readonly number[]): number =>
	Math.hypot(labs[cell * 3]! - mean[0]!, labs[cell * 3 + 1]! - mean[1]!, labs[cell * 3 + 2]! - mean[2]!);

/** Cells joined to `seed` by small steps that stay near the region's running mean. */
function grow({ width, height, labs, free }: Grid, seed: number, taken: Uint8Array): number[] {
	const cells = [seed];
	taken[seed] = 1;
	const sums = [labs[seed * 3]!, labs[seed * 3 + 1]!, labs[seed * 3 + 2]!];
	for (let next = 0; next < cells.length; next++) {
		const cell = cells[next]!;
		const column = cell % width;
		const row = (cell - column) / width;
		const here = [labs[cell * 3]!, labs[cell * 3 + 1]!, labs[cell * 3 + 2]!];
		const mean = sums.map((sum) => sum / cells.length);
		const around = [
			column > 0 && cell - 1,
			column + 1 < width && cell + 1,
			row > 0 && cell - width,
			row + 1 < height && cell + width,
		];
		for (const other of around) {
			if (other === false || taken[other] || !free[other]) continue;
			if (distance(labs, other, here) > LARGEST_STEP || distance(labs, other, mean) > LARGEST_DISTANCE) continue;
			taken[other] = 1;
			cells.push(other);
			for (let k = 0; k < 3; k++) sums[k]! += labs[other * 3 + k]!;
		}
	}
	return cells;
}

/** Smallest rectangle around the cells over turns of 3 degrees: its area and sides, in cells. */
function boundingRectangle(
	cells: readonly number[],
	width: number,
): { readonly area: number; readonly aspect: number } {
	let best = { area: Number.POSITIVE_INFINITY, aspect: 1 };
	for (let degrees = 0; degrees < 90; degrees += 3) {
		const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
		let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
		for (const cell of cells) {
			const x = cell % width;
			const y = Math.floor(cell / width);
			const [u, v] = [x * c + y * s, y * c - x * s];
			left = Math.min(left, u);
			right = Math.max(right, u);
			top = Math.min(top, v);
			bottom = Math.max(bottom, v);
		}
		const [a, b] = [right - left + 1, bottom - top + 1];
		if (a * b < best.area) best = { area: a * b, aspect: Math.max(a, b) / Math.min(a, b) };
	}
	return best;
}

function regionOf(grid: Grid, cells: readonly number[]): EvenRegion {
	const { width, height, labs, scale } = grid;
	const mean = [0, 1, 2].map((k) => cells.reduce((sum, cell) => sum + labs[cell * 3 + k]!, 0) / cells.length);
	const squares = cells.reduce((sum, cell) => sum + distance(labs, cell, mean) ** 2, 0);
	const column = (cell: number) => cell % width;
	const row = (cell: number) => Math.floor(cell / width);
	const { area, aspect } = boundingRectangle(cells, width);
	const border = cells.filter(
		(c) => column(c) === 0 || row(c) === 0 || column(c) === width - 1 || row(c) === height - 1,
	);
	const middle = (of: (cell: number) => number) =>
		(cells.reduce((sum, cell) => sum + of(cell), 0) / cells.length + 0.5) * scale;
	return {
		lab: mean as unknown as Lab65,
		areaShare: cells.length / (width * height),
		fill: Math.min(1, cells.length / area),
		aspect,
		unevenness: Math.sqrt(squares / cells.length),
		onBorder: border.length / cells.length,
		x: middle(column),
		y: middle(row),
	};
}

/** The background's even patches of at least 0.4 % of the frame, in the order of their first pixel. */
export function evenRegions(pixels: Pixels, labels: LabelMap): EvenRegion[] {
	const grid = gridOf(pixels, labels);
	const taken = new Uint8Array(grid.free.length);
	const regions: EvenRegion[] = [];
	for (let seed = 0; seed < taken.length; seed++) {
		if (taken[seed] || !grid.free[seed]) continue;
		const cells = grow(grid, seed, taken);
		if (cells.length >= LEAST_AREA * taken.length) regions.push(regionOf(grid, cells));
	}
	return regions;
}
