import { labFromPixels } from '../../colour/lab-pixels.ts';
import { chroma, type Lab65 } from '../../colour/lab65.ts';
import { medianLab } from '../../colour/median-lab.ts';
import { BACKGROUND, isClothes, type LabelMap, type Pixels } from '../pixels.ts';

/** Longest side of the grid that is looked at, about. */
const GRID_SIDE = 200;
/** Part of the shorter side along the frame in which the ground is looked for, and the share of it that must show one colour. */
const RING = 0.08;
const LEAST_OF_RING = 0.6;
/** A ground of less chroma may well be the cloth's colour too. */
const BOLD = 30;
/** Tints this near to the ground's, at one lightness, are the ground's; shadow and shine of a sheet stay within so much lightness. */
const SAME_TINT = 9;
const SAME_LIGHTNESS = 26;
/** No seam or edge lies between neighbouring cells that differ by less (CIELAB, Euclid). */
const NO_EDGE = 5;
/** What is taken out of the outline: less is its rim, more is a garment in the colour of its ground. */
const TAKEN_OUT: readonly [least: number, most: number] = [0.02, 0.6];

type Grid = {
	readonly width: number;
	readonly height: number;
	/** Pixels of the picture along a cell's side. */
	readonly scale: number;
	/** Mean colour of each cell, L, a, b. */
	readonly labs: Float32Array;
	/** 1 where the cell's middle is taken for cloth. */
	readonly cloth: Uint8Array;
};

function gridOf({ widthPx, heightPx, rgb }: Pixels, { classes }: LabelMap): Grid {
	const scale = Math.max(1, Math.round(Math.max(widthPx, heightPx) / GRID_SIDE));
	const [width, height] = [Math.floor(widthPx / scale), Math.floor(heightPx / scale)];
	const bytes = new Uint8Array(width * height * 3);
	const cloth = new Uint8Array(width * height);
	const area = scale * scale;
	for (let cell = 0; cell < cloth.length; cell++) {
		const corner = (Math.floor(cell / width) * widthPx + (cell % width)) * scale;
		const sums = [0, 0, 0];
		for (let line = 0; line < scale; line++)
			for (let at = (corner + line * widthPx) * 3, end = at + scale * 3; at < end; at += 3)
				for (let k = 0; k < 3; k++) sums[k]! += rgb[at + k]!;
		for (let k = 0; k < 3; k++) bytes[cell * 3 + k] = sums[k]! / area + 0.5;
		cloth[cell] = isClothes(classes[corner + (scale >> 1) * (widthPx + 1)]!) ? 1 : 0;
	}
	return { width, height, scale, labs: labFromPixels(bytes, 3), cloth };
}

const labAt = ({ labs }: Grid, cell: number): Lab65 => [labs[cell * 3]!, labs[cell * 3 + 1]!, labs[cell * 3 + 2]!];

/** Whether a colour is the ground's in more or less light: its tint at the ground's lightness (as CIELAB's cube root moves it). */
function isLike(ground: Lab65, [L, a, b]: Lab65): boolean {
	const scale = (ground[0] + 16) / (L + 16);
	return (
		Math.abs(L - ground[0]) <= SAME_LIGHTNESS && Math.hypot(a * scale - ground[1], b * scale - ground[2]) <= SAME_TINT
	);
}

/** The cells along the frame: those that no cloth covers, and how many there are with the others. */
function ringOf({ width, height, cloth }: Grid): { readonly free: Uint32Array; readonly count: number } {
	const depth = Math.ceil(RING * Math.min(width, height));
	const free = new Uint32Array(cloth.length);
	let [count, freeCount] = [0, 0];
	for (let y = 0; y < height; y++) {
		const isAcross = y < depth || y >= height - depth;
		for (let x = 0; x < width; x++) {
			if (!isAcross && x === depth) x = Math.max(depth, width - depth);
			count++;
			const cell = y * width + x;
			if (cloth[cell] === 0) free[freeCount++] = cell;
		}
	}
	return { free: free.subarray(0, freeCount), count };
}

/** The colour of the one bold ground that lies along the frame, or null. */
function boldGround(grid: Grid): Lab65 | null {
	const { free, count } = ringOf(grid);
	if (free.length < LEAST_OF_RING * count) return null;
	const labs = new Float32Array(free.length * 3);
	for (const [at, cell] of free.entries()) labs.set(grid.labs.subarray(cell * 3, cell * 3 + 3), at * 3);
	const ground = medianLab(labs);
	if (chroma(ground) < BOLD) return null;
	const like = free.reduce((sum, cell) => sum + (isLike(ground, labAt(grid, cell)) ? 1 : 0), 0);
	return like >= LEAST_OF_RING * count ? ground : null;
}

/** The cells of cloth that the ground runs into without an edge. */
function runInto(grid: Grid, ground: Lab65): number[] {
	const { width, height, cloth } = grid;
	const like = Uint8Array.from(cloth, (_, cell) => (isLike(ground, labAt(grid, cell)) ? 1 : 0));
	const reached = Uint8Array.from(cloth, (value, cell) => (value === 0 && like[cell] === 1 ? 1 : 0));
	const queue = [...reached.keys()].filter((cell) => reached[cell] === 1);
	const taken: number[] = [];
	for (const cell of queue) {
		const [x, y] = [cell % width, Math.floor(cell / width)];
		const around = [x > 0 ? -1 : 0, x < width - 1 ? 1 : 0, y > 0 ? -width : 0, y < height - 1 ? width : 0];
		const here = labAt(grid, cell);
		for (const step of around) {
			const other = cell + step;
			if (reached[other] === 1 || like[other] === 0) continue;
			const there = labAt(grid, other);
			if (Math.hypot(there[0] - here[0], there[1] - here[1], there[2] - here[2]) > NO_EDGE) continue;
			reached[other] = 1;
			queue.push(other);
			taken.push(other);
		}
	}
	return taken;
}

/**
 * The labels without what was taken for cloth and is the bold ground itself: of one colour with it, and no edge between them, as a red sheet between sleeve and body. Where the
 * ground is dull, of several colours, or of the garment's own colour, the labels stay as they are.
 */
export function withoutBoldGround(pixels: Pixels, labels: LabelMap): LabelMap {
	const grid = gridOf(pixels, labels);
	const ground = boldGround(grid);
	if (!ground) return labels;
	const taken = runInto(grid, ground);
	const cloth = grid.cloth.reduce((sum, value) => sum + value, 0);
	if (taken.length < TAKEN_OUT[0] * cloth || taken.length > TAKEN_OUT[1] * cloth) return labels;
	const classes = labels.classes.slice();
	for (const cell of taken) {
		const corner = (Math.floor(cell / grid.width) * labels.widthPx + (cell % grid.width)) * grid.scale;
		for (let line = 0; line < grid.scale; line++) {
			const from = corner + line * labels.widthPx;
			for (let at = from; at < from + grid.scale; at++) if (isClothes(classes[at]!)) classes[at] = BACKGROUND;
		}
	}
	return { ...labels, classes };
}
