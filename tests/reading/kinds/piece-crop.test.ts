import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pieceBox } from '../../../src/reading/kinds/piece-box.ts';
import { CROP_SIDE, pieceCrop } from '../../../src/reading/kinds/piece-crop.ts';
import { pieceNumbers } from '../../../src/reading/kinds/piece-numbers.ts';
import type { Pixels } from '../../../src/reading/pixels.ts';

type Case = {
	readonly ellipse: readonly [number, number, number, number];
	readonly box: readonly number[];
	readonly numbers: readonly number[];
	readonly crop: readonly number[];
};

// Source: PyTorch's grid_sample and NumPy, as the network was trained (training/crop_fixture.py, which also describes the picture).
const reference = JSON.parse(
	readFileSync(new URL('../../../fixtures/reference/piece-crops.json', import.meta.url), 'utf8'),
) as { readonly side: number; readonly every: number; readonly cases: readonly Case[] };

const [widthPx, heightPx] = [400, 600];
const pixels: Pixels = { widthPx, heightPx, rgb: new Uint8Array(widthPx * heightPx * 3), alpha: null };
for (let at = 0; at < widthPx * heightPx; at++) {
	const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
	pixels.rgb.set([(7 * x + 3 * y) % 256, (x * y) % 251, (x * x + y) % 253], at * 3);
}

function marksOf([cx, cy, a, b]: Case['ellipse']): Uint8Array {
	return Uint8Array.from({ length: widthPx * heightPx }, (_, at) => {
		const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
		return ((x + 0.5 - cx) / a) ** 2 + ((y + 0.5 - cy) / b) ** 2 < 1 ? 1 : 0;
	});
}

describe.each(reference.cases)('a piece around $ellipse', ({ ellipse, box, numbers, crop }) => {
	const marks = marksOf(ellipse);
	const found = pieceBox(marks, widthPx, 1, 1)!;

	it('lies in the same box as in training', () => {
		expect([found.left, found.top, found.right, found.bottom]).toEqual(box);
	});

	it('has the same numbers as in training', () => {
		const classes = marks.map((mark, at) => {
			const y = Math.floor(at / widthPx);
			return mark === 1 ? 1 : y >= 100 && y < 120 ? 8 : 0;
		});
		const ours = pieceNumbers(found, { widthPx, heightPx, classes });
		expect(ours).toHaveLength(numbers.length);
		for (const [index, number] of numbers.entries()) expect(ours[index]).toBeCloseTo(number, 4);
	});

	it('gives the same crop as in training', () => {
		expect(CROP_SIDE).toBe(reference.side);
		const ours = pieceCrop(pixels, marks, found);
		expect(ours).toHaveLength(4 * CROP_SIDE * CROP_SIDE);
		for (const [index, value] of crop.entries()) expect(ours[index * reference.every]).toBeCloseTo(value, 3);
	});
});

describe('the box of a piece', () => {
	it('is none where nothing is marked', () => {
		expect(pieceBox(new Uint8Array(12), 4, 1, 1)).toBeNull();
	});

	it('holds a single pixel', () => {
		const marks = new Uint8Array(12);
		marks[6] = 1;
		expect(pieceBox(marks, 4, 1, 1)).toEqual({ left: 2, top: 1, right: 3, bottom: 2, area: 1 });
	});
});
