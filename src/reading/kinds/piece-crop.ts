import type { Pixels } from '../pixels.ts';
import type { PieceBox } from './piece-box.ts';

/** Side of a crop, pixels, as the network was trained. */
export const CROP_SIDE = 160;
/** Side of the square in the picture, as a multiple of the box's longer edge. */
const WIDER = 1.3;

/** For each cell of one axis: four places of the picture and what each counts. Two samples a cell, each between two neighbours. */
type Taps = { readonly at: Int32Array; readonly weight: Float32Array; readonly inside: Float32Array };

/** Samples of a square that starts at `start` and is `extent` pixels long, on an axis of `size` pixels. Past its ends the last pixel goes on. */
function axisTaps(start: number, extent: number, size: number): Taps {
	const at = new Int32Array(CROP_SIDE * 4);
	const weight = new Float32Array(CROP_SIDE * 4);
	const inside = new Float32Array(CROP_SIDE * 4);
	for (let sample = 0; sample < CROP_SIDE * 2; sample++) {
		const place = start + ((sample + 0.5) * extent) / (CROP_SIDE * 2) - 0.5;
		const low = Math.floor(place);
		for (let k = 0; k < 2; k++) {
			const tap = sample * 2 + k;
			at[tap] = Math.min(size - 1, Math.max(0, low + k));
			weight[tap] = (k === 0 ? 1 - (place - low) : place - low) / 2;
			// Nothing is marked past the picture's end, where its colours go on.
			inside[tap] = low + k >= 0 && low + k < size ? weight[tap]! : 0;
		}
	}
	return { at, weight, inside };
}

/** The rows from the first to the last that the taps need, each resampled to the crop's width: red, green, blue, mark of each cell. */
function resampledRows(pixels: Pixels, marks: Uint8Array, columns: Taps, first: number, past: number): Float32Array {
	const { rgb, widthPx } = pixels;
	const out = new Float32Array((past - first) * CROP_SIDE * 4);
	for (let row = first, to = 0; row < past; row++) {
		const start = row * widthPx;
		for (let cell = 0; cell < CROP_SIDE; cell++, to += 4) {
			let red = 0;
			let green = 0;
			let blue = 0;
			let mark = 0;
			for (let tap = cell * 4; tap < cell * 4 + 4; tap++) {
				const from = start + columns.at[tap]!;
				const weight = columns.weight[tap]!;
				red += rgb[from * 3]! * weight;
				green += rgb[from * 3 + 1]! * weight;
				blue += rgb[from * 3 + 2]! * weight;
				if (marks[from] === 1) mark += columns.inside[tap]!;
			}
			out[to] = red;
			out[to + 1] = green;
			out[to + 2] = blue;
			out[to + 3] = mark;
		}
	}
	return out;
}

/**
 * The crop around a piece as the network was trained on it: planes of red, green, blue and mark, `CROP_SIDE` a side, 0..1. `marks` has one byte a
 * pixel, 1 = piece. The square is sampled at twice the side and averaged down, each sample bilinear.
 */
export function pieceCrop(pixels: Pixels, marks: Uint8Array, box: PieceBox): Float32Array {
	const extent = Math.max(box.right - box.left, box.bottom - box.top) * WIDER;
	const columns = axisTaps((box.left + box.right - extent) / 2, extent, pixels.widthPx);
	const rows = axisTaps((box.top + box.bottom - extent) / 2, extent, pixels.heightPx);
	const first = rows.at[0]!;
	const resampled = resampledRows(pixels, marks, columns, first, rows.at[rows.at.length - 1]! + 1);
	const plane = CROP_SIDE * CROP_SIDE;
	const out = new Float32Array(4 * plane);
	for (let y = 0, to = 0; y < CROP_SIDE; y++) {
		for (let x = 0; x < CROP_SIDE; x++, to++) {
			for (let tap = y * 4; tap < y * 4 + 4; tap++) {
				const from = ((rows.at[tap]! - first) * CROP_SIDE + x) * 4;
				const weight = rows.weight[tap]! / 255;
				out[to]! += resampled[from]! * weight;
				out[plane + to]! += resampled[from + 1]! * weight;
				out[2 * plane + to]! += resampled[from + 2]! * weight;
				out[3 * plane + to]! += resampled[from + 3]! * rows.inside[tap]!;
			}
		}
	}
	return out;
}
