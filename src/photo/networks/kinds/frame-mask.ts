import type { Frame } from '../../../reading/outline/outline-picture.ts';
import { MASK_HEIGHT, MASK_WIDTH } from './kinds-network.ts';

/** Samples a cell along each axis: a cell holds about four pixels of an analysed picture. */
const SAMPLES = 3;

/** Pixel under each sample of one axis, -1 outside the photo. */
function samplePlaces(cells: number, start: number, extent: number, size: number): Int32Array {
	const places = new Int32Array(cells * SAMPLES);
	for (let i = 0; i < places.length; i++) {
		const share = ((i + 0.5) / places.length - start) / extent;
		places[i] = share < 0 || share >= 1 ? -1 : Math.floor(share * size);
	}
	return places;
}

/** Share of each cell of the outline network's picture that is marked 1, 0..1. `marks`: one byte a pixel of the photo. */
export function frameMask(marks: Uint8Array, widthPx: number, frame: Frame): Float32Array {
	const columns = samplePlaces(MASK_WIDTH, frame.left, frame.widthPx, widthPx);
	const rows = samplePlaces(MASK_HEIGHT, frame.top, frame.heightPx, marks.length / widthPx);
	const mask = new Float32Array(MASK_WIDTH * MASK_HEIGHT);
	for (let y = 0; y < rows.length; y++) {
		const row = rows[y]!;
		if (row < 0) continue;
		const to = Math.floor(y / SAMPLES) * MASK_WIDTH;
		for (let x = 0; x < columns.length; x++) {
			const column = columns[x]!;
			if (column >= 0 && marks[row * widthPx + column] === 1) mask[to + Math.floor(x / SAMPLES)]! += 1 / SAMPLES ** 2;
		}
	}
	return mask;
}
