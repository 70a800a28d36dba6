import { labFromPixels } from '../../colour/lab-pixels.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses } from '../pixels.ts';

/** A patch of background of one even colour. */
export type EvenRegion = {
	/** Mean colour of its inner pixels. */
	readonly lab: Lab65;
	/** Share of the frame. */
	readonly areaShare: number;
	/** Its area as a share of the smallest turned rectangle around it, 0..1: 1 for a sheet of paper; 0 where it touches the frame, beyond which it may go on. */
	readonly fill: number;
	/** Longer side by shorter side of that rectangle; 1 where it touches the frame. */
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
	/** 1 = background that belongs to no region yet. */
	readonly free: Uint8Array;
	/** Pixels of the picture along a cell's side. */
	readonly scale: number;
};

/** The background averaged over square cells; a cell with anything else in it is not free. */
function gridOf(pixels: Pixels, labels: LabelMap): Grid {
	const { widthPx, heightPx, rgb } = pixels;
	const scale = Math.max(1, Math.round(Math.max(widthPx, heightPx) / GRID_SIDE));
	const [width, height] = [Math.floor(widthPx / scale), Math.floor(heightPx / scale)];
	const bytes = new Uint8Array(width * height * 3);
	const free = new Uint8Array(width * height);
	const classes = seenClasses(pixels, labels);
	const area = scale * scale;
	// The colours of free cells, one after the other: nobody asks for the others'.
	let count = 0;
	for (let row = 0, cell = 0; row < height; row++) {
		for (let column = 0; column < width; column++, cell++) {
			const corner = (row * widthPx + column) * scale;
			if (classes[corner] !== BACKGROUND) continue;
			let r = 0;
			let g = 0;
			let b = 0;
			let isFree = true;
			for (let line = 0, from = corner; line < scale && isFree; line++, from += widthPx) {
				for (let at = from, end = from + scale; at < end; at++) if (classes[at] !== BACKGROUND) isFree = false;
				for (let at = from * 3, end = (from + scale) * 3; at < end; at += 3) {
					r += rgb[at]!;
					g += rgb[at + 1]!;
					b += rgb[at + 2]!;
				}
			}
			if (!isFree) continue;
			free[cell] = 1;
			bytes[count * 3] = r / area + 0.5;
			bytes[count * 3 + 1] = g / area + 0.5;
			bytes[count * 3 + 2] = b / area + 0.5;
			count++;
		}
	}
	const ofFree = labFromPixels(bytes.subarray(0, count * 3), 3);
	const labs = new Float32Array(free.length * 3);
	for (let cell = 0, from = 0; cell < free.length; cell++) {
		if (free[cell] === 0) continue;
		for (let axis = 0; axis < 3; axis++) labs[cell * 3 + axis] = ofFree[from++]!;
	}
	return { width, height, labs, free, scale };
}

/**
 * Cells joined to `seed` by small steps that stay near the region's running mean; they are no longer free. `room` is where they are written: as
 * long as the grid.
 */
function grow({ width, labs, free }: Grid, seed: number, room: Uint32Array): Uint32Array {
	const around = [-1, 1, -width, width];
	let [L, a, b] = [labs[seed * 3]!, labs[seed * 3 + 1]!, labs[seed * 3 + 2]!];
	let count = 1;
	room[0] = seed;
	free[seed] = 0;
	for (let next = 0; next < count; next++) {
		const cell = room[next]!;
		const column = cell % width;
		const here = cell * 3;
		const meanL = L / count;
		const meanA = a / count;
		const meanB = b / count;
		for (let side = column > 0 ? 0 : 1; side < 4; side++) {
			const other = cell + around[side]!;
			if ((side === 1 && column === width - 1) || free[other] !== 1) continue;
			const at = other * 3;
			if (squared(labs, at, labs[here]!, labs[here + 1]!, labs[here + 2]!) > LARGEST_STEP ** 2) continue;
			if (squared(labs, at, meanL, meanA, meanB) > LARGEST_DISTANCE ** 2) continue;
			free[other] = 0;
			room[count++] = other;
			L += labs[at]!;
			a += labs[at + 1]!;
			b += labs[at + 2]!;
		}
	}
	return room.subarray(0, count);
}

/** Squared distance (CIELAB, Euclid) of the colour written at `at`. */
function squared(labs: Float32Array, at: number, L: number, a: number, b: number): number {
	const lightness = labs[at]! - L;
	const red = labs[at + 1]! - a;
	const yellow = labs[at + 2]! - b;
	return lightness * lightness + red * red + yellow * yellow;
}

/** The outermost cells of each row: whatever rectangle holds them holds the region. */
function rowEnds(cells: Uint32Array, { width, height }: Grid): number[] {
	const first = new Int32Array(height).fill(-1);
	const last = new Int32Array(height);
	for (const cell of cells) {
		const row = Math.floor(cell / width);
		if (first[row] === -1) first[row] = last[row] = cell;
		else if (cell < first[row]!) first[row] = cell;
		else if (cell > last[row]!) last[row] = cell;
	}
	return [...first.keys()].filter((row) => first[row] !== -1).flatMap((row) => [first[row]!, last[row]!]);
}

/** Smallest rectangle around the cells over turns of 3 degrees: its area and sides, in cells. */
function boundingRectangle(cells: Uint32Array, grid: Grid): { readonly area: number; readonly aspect: number } {
	const ends = rowEnds(cells, grid);
	let best = { area: Number.POSITIVE_INFINITY, aspect: 1 };
	for (let degrees = 0; degrees < 90; degrees += 3) {
		const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
		let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
		for (const cell of ends) {
			const x = cell % grid.width;
			const y = Math.floor(cell / grid.width);
			const u = x * c + y * s;
			const v = y * c - x * s;
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

/** The rectangle around a region that goes on beyond the frame. */
const UNSEEN = { area: Number.POSITIVE_INFINITY, aspect: 1 };

function regionOf(grid: Grid, cells: Uint32Array): EvenRegion {
	const { width, height, labs, scale } = grid;
	let [L, a, b, x, y, border, squares] = [0, 0, 0, 0, 0, 0, 0];
	for (const cell of cells) {
		const column = cell % width;
		const row = (cell - column) / width;
		L += labs[cell * 3]!;
		a += labs[cell * 3 + 1]!;
		b += labs[cell * 3 + 2]!;
		x += column;
		y += row;
		if (column === 0 || row === 0 || column === width - 1 || row === height - 1) border++;
	}
	const lab: Lab65 = [L / cells.length, a / cells.length, b / cells.length];
	for (const cell of cells) squares += squared(labs, cell * 3, lab[0], lab[1], lab[2]);
	const { area, aspect } = border > 0 ? UNSEEN : boundingRectangle(cells, grid);
	return {
		lab,
		areaShare: cells.length / (width * height),
		fill: Math.min(1, cells.length / area),
		aspect,
		unevenness: Math.sqrt(squares / cells.length),
		onBorder: border / cells.length,
		x: (x / cells.length + 0.5) * scale,
		y: (y / cells.length + 0.5) * scale,
	};
}

/** The background's even patches of at least 0.4 % of the frame, in the order of their first pixel. */
export function evenRegions(pixels: Pixels, labels: LabelMap): EvenRegion[] {
	const grid = gridOf(pixels, labels);
	const room = new Uint32Array(grid.free.length);
	const regions: EvenRegion[] = [];
	for (let seed = 0; seed < room.length; seed++) {
		if (!grid.free[seed]) continue;
		const cells = grow(grid, seed, room);
		if (cells.length >= LEAST_AREA * room.length) regions.push(regionOf(grid, cells));
	}
	return regions;
}
