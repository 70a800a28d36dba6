import { LINEAR_OF_8_BIT } from '../../colour/lab-pixels.ts';
import { labFromLinear } from '../../colour/lab65.ts';
import { luminanceOfLinear } from '../../colour/luminance.ts';
import { medianOf, nthSmallest } from '../../colour/median.ts';
import type { SeenGround } from '../../wardrobe/words/reading.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses } from '../pixels.ts';
import { type Field, type GroundFields, textureOf, valuesAt } from './texture.ts';

/** Longest side of the grid the ground is looked at on. */
const GRID_SIDE = 192;
/** Cells this near to anything else than background lie in its shadow or hold some of it. */
const MARGIN = 3;
/** Keeps logarithms finite where all is black; noise of a dark picture stays below. */
const FLOOR = 0.004;
/** What belongs to the ground lies within so many stops of its middle, in the ratios of the channels and in brightness. */
const RATIO_REACH = 0.5;
const BRIGHTNESS_REACH = 1.6;
const ROUNDS = 4;
/** Less than this share of the frame tells nothing. */
const LEAST_SHARE = 0.06;
/** The ground counts where it is lit: between these ranks of its brightness, above its shadows and below what shines. */
const LIT: readonly [from: number, to: number] = [0.4, 0.9];

type Grid = {
	readonly width: number;
	readonly height: number;
	/** Linear light of each cell, three a cell. */
	readonly linear: Float32Array;
	/** 1 where nothing but background lies in the cell or near it. */
	readonly free: Uint8Array;
};

function gridOf({ widthPx, heightPx, rgb }: Pixels, classes: Uint8Array): Grid {
	const scale = Math.max(1, Math.max(widthPx, heightPx) / GRID_SIDE);
	const [width, height] = [Math.floor(widthPx / scale), Math.floor(heightPx / scale)];
	const linear = new Float32Array(width * height * 3);
	const counts = new Uint16Array(width * height);
	const other = new Uint8Array(width * height);
	const column = Uint16Array.from({ length: widthPx }, (_, x) => Math.min(width - 1, Math.floor(x / scale)));
	for (let y = 0, at = 0; y < heightPx; y++) {
		const row = Math.min(height - 1, Math.floor(y / scale)) * width;
		for (let x = 0; x < widthPx; x++, at++) {
			const cell = row + column[x]!;
			if (classes[at] !== BACKGROUND) other[cell] = 1;
			counts[cell]!++;
			linear[cell * 3]! += LINEAR_OF_8_BIT[rgb[at * 3]!]!;
			linear[cell * 3 + 1]! += LINEAR_OF_8_BIT[rgb[at * 3 + 1]!]!;
			linear[cell * 3 + 2]! += LINEAR_OF_8_BIT[rgb[at * 3 + 2]!]!;
		}
	}
	for (let cell = 0; cell < counts.length; cell++) for (let k = 0; k < 3; k++) linear[cell * 3 + k]! /= counts[cell]!;
	return { width, height, linear, free: awayFrom(other, width, height) };
}

/** 1 where nothing marked lies within the margin, first along rows, then along columns. */
function awayFrom(marked: Uint8Array, width: number, height: number): Uint8Array {
	const spread = (from: Uint8Array, step: number, length: number, place: (at: number) => number) => {
		const to = from.slice();
		for (let at = 0; at < from.length; at++) {
			if (from[at] !== 1) continue;
			for (let d = -MARGIN; d <= MARGIN; d++) {
				const there = place(at) + d;
				if (there >= 0 && there < length) to[at + d * step] = 1;
			}
		}
		return to;
	};
	const along = spread(marked, 1, width, (at) => at % width);
	return spread(along, width, height, (at) => Math.floor(at / width)).map((value) => 1 - value);
}

/** The cells of the ground itself: those around one middle, so that a chair or a rug's edge falls out. */
function groundCells(free: Int32Array, { redness, blueness, brightness }: GroundFields): Int32Array {
	let kept = free;
	for (let round = 0; round < ROUNDS && kept.length > 0; round++) {
		const [red, blue, bright] = [redness, blueness, brightness].map((field) => medianOf(valuesAt(field, kept)));
		kept = kept.filter(
			(cell) =>
				Math.abs(redness[cell]! - red!) <= RATIO_REACH &&
				Math.abs(blueness[cell]! - blue!) <= RATIO_REACH &&
				Math.abs(brightness[cell]! - bright!) <= BRIGHTNESS_REACH,
		);
	}
	return kept;
}

/** Redness, blueness and brightness of every cell. */
function fieldsOf({ linear, free }: Grid): GroundFields {
	const [redness, blueness, brightness] = [0, 1, 2].map(() => new Float32Array(free.length)) as [Field, Field, Field];
	for (let cell = 0, at = 0; cell < free.length; cell++, at += 3) {
		if (free[cell] === 0) continue;
		const [r, g, b] = [linear[at]!, linear[at + 1]!, linear[at + 2]!];
		const green = Math.log2(g + FLOOR);
		redness[cell] = Math.log2(r + FLOOR) - green;
		blueness[cell] = Math.log2(b + FLOOR) - green;
		brightness[cell] = Math.log2(luminanceOfLinear(r, g, b) + FLOOR);
	}
	return { redness, blueness, brightness };
}

/** The places of the cells that are free, rising. */
function placesOf(free: Uint8Array): Int32Array {
	const places = new Int32Array(free.length);
	let count = 0;
	for (let cell = 0; cell < free.length; cell++) if (free[cell] === 1) places[count++] = cell;
	return places.subarray(0, count);
}

/** The cells between two ranks of brightness. */
function litCells(cells: Int32Array, brightness: Field): Int32Array {
	const [from, to] = LIT.map((share) =>
		nthSmallest(valuesAt(brightness, cells), Math.floor(share * (cells.length - 1))),
	) as [number, number];
	return cells.filter((cell) => brightness[cell]! >= from && brightness[cell]! <= to);
}

/**
 * The bed, floor or wall that the clothes lie on or hang before: its colour where it is lit, uncorrected, and how it changes from place to place.
 * Null where less than 6 % of the frame shows it. What lies around and is of another colour, and shadows, are left out.
 */
export function seenGround(pixels: Pixels, labels: LabelMap): SeenGround | null {
	const grid = gridOf(pixels, seenClasses(pixels, labels));
	const { width, height, linear, free } = grid;
	const fields = fieldsOf(grid);
	const cells = groundCells(placesOf(free), fields);
	if (cells.length === 0 || cells.length < LEAST_SHARE * free.length) return null;
	const lit = litCells(cells, fields.brightness);
	const channel = (k: number) =>
		medianOf(
			valuesAt(
				linear,
				lit.map((cell) => cell * 3 + k),
			),
		);
	return {
		lab: labFromLinear([channel(0), channel(1), channel(2)]),
		share: cells.length / free.length,
		texture: textureOf({ width, height, cells }, fields),
	};
}
