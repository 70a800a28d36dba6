import { describe, expect, it } from 'vitest';
import { garmentMarks } from '../../../src/reading/apart/garment-marks.ts';
import { WAY, type WaysToMiddles } from '../../../src/reading/apart/ways-to-middles.ts';

/** A photo of 2 x 2 pixels a cell that fills the network's picture. */
const [widthCells, heightCells] = [30, 24];
const [widthPx, heightPx] = [60, 48];
const WHOLE = { left: 0, top: 0, widthPx: 1, heightPx: 1 };

type Box = readonly [left: number, top: number, right: number, bottom: number];

const isIn = ([left, top, right, bottom]: Box, x: number, y: number) =>
	x >= left && x < right && y >= top && y < bottom;

/** What a network would say that knows the garments: boxes in cells, later ones over earlier ones. `middles`: which of them it is sure of. */
function waysOf(garments: readonly Box[], middles: readonly number[] = garments.map(() => 5)): WaysToMiddles {
	const cells = widthCells * heightCells;
	const [middle, across, down] = [new Float32Array(cells).fill(-9), new Float32Array(cells), new Float32Array(cells)];
	for (let at = 0; at < cells; at++) {
		const [x, y] = [at % widthCells, Math.floor(at / widthCells)];
		const mine = garments.findLast((box) => isIn(box, x, y));
		if (!mine) continue;
		across[at] = ((mine[0] + mine[2] - 1) / 2 - x) / WAY;
		down[at] = ((mine[1] + mine[3] - 1) / 2 - y) / WAY;
	}
	for (const [index, [left, top, right, bottom]] of garments.entries())
		middle[Math.floor((top + bottom) / 2) * widthCells + Math.floor((left + right) / 2)] = middles[index]!;
	return { widthCells, heightCells, middle, across, down };
}

const labelsOf = (garments: readonly Box[]) => ({
	widthPx,
	heightPx,
	classes: Uint8Array.from({ length: widthPx * heightPx }, (_, at) =>
		garments.some((box) => isIn(box, (at % widthPx) / 2, Math.floor(at / widthPx) / 2)) ? 1 : 0,
	),
});

/** The garment in the pixel at the middle of a cell. */
const at = (marks: Uint8Array, x: number, y: number) => marks[y * 2 * widthPx + x * 2]!;

describe('garments in one photo', () => {
	const shirt: Box = [2, 2, 14, 22];
	const skirt: Box = [14, 2, 28, 22];

	it('are told apart where they touch, and ground stays ground', () => {
		const marks = garmentMarks(labelsOf([shirt, skirt]), WHOLE, waysOf([shirt, skirt]));
		expect(new Set([at(marks, 3, 10), at(marks, 26, 10)])).toEqual(new Set([1, 2]));
		expect(at(marks, 12, 10)).toBe(at(marks, 3, 10));
		expect(at(marks, 16, 10)).toBe(at(marks, 26, 10));
		expect(at(marks, 0, 0)).toBe(0);
		expect(marks.filter((mark) => mark > 0)).toHaveLength((12 + 14) * 20 * 4);
	});

	it('are told apart where one lies over the other, on both sides of it', () => {
		const scarf: Box = [4, 16, 28, 20];
		const dress: Box = [6, 0, 24, 24];
		const marks = garmentMarks(labelsOf([dress, scarf]), WHOLE, waysOf([dress, scarf]));
		expect(at(marks, 15, 3)).toBe(at(marks, 15, 22));
		expect(at(marks, 15, 18)).not.toBe(at(marks, 15, 3));
	});

	it('are one where one middle is seen, where the network doubts a second, or where it sees none', () => {
		for (const middles of [
			[5, -9],
			[5, -1.5],
			[-9, -9],
		]) {
			const marks = garmentMarks(labelsOf([shirt, skirt]), WHOLE, waysOf([shirt, skirt], middles));
			expect(new Set(marks)).toEqual(new Set([0, 1]));
		}
	});

	it('are none of their own where too little is seen: a pocket belongs to its shirt', () => {
		const pocket: Box = [8, 4, 11, 7];
		const marks = garmentMarks(labelsOf([shirt]), WHOLE, waysOf([shirt, pocket]));
		expect(new Set(marks)).toEqual(new Set([0, 1]));
	});

	it('are found where the photo lies in the network’s picture', () => {
		// A wide photo: the upper and lower quarter of the picture only draw out its edge.
		const frame = { left: 0, top: 0.25, widthPx: 1, heightPx: 0.5 };
		const low = (box: Box): Box => [box[0], 6 + box[1] / 2, box[2], 6 + box[3] / 2];
		const marks = garmentMarks(labelsOf([shirt, skirt]), frame, waysOf([low(shirt), low(skirt)]));
		expect(at(marks, 12, 10)).toBe(at(marks, 3, 4));
		expect(at(marks, 16, 10)).toBe(at(marks, 26, 18));
		expect(at(marks, 12, 10)).not.toBe(at(marks, 16, 10));
	});
});
