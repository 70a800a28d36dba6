import { describe, expect, it } from 'vitest';
import { laidOutGarments, splitProposal } from '../../../src/reading/kinds/laid-out.ts';

const [widthPx, heightPx] = [100, 80];
/** Labels with cloth in boxes: left, top, right, bottom. */
const labels = (...boxes: readonly (readonly [number, number, number, number])[]) => ({
	widthPx,
	heightPx,
	classes: Uint8Array.from({ length: widthPx * heightPx }, (_, at) => {
		const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
		return boxes.some(([left, top, right, bottom]) => x >= left && x < right && y >= top && y < bottom) ? 1 : 0;
	}),
});

describe('garments laid side by side', () => {
	it('are told apart where ground lies between them, the largest first', () => {
		const garments = laidOutGarments(labels([5, 5, 30, 70], [50, 10, 95, 70]));
		expect(garments.map(({ box }) => [box.left, box.right])).toEqual([
			[50, 95],
			[5, 30],
		]);
	});

	it('are not made of specks or of what broke off one garment', () => {
		expect(laidOutGarments(labels([5, 5, 60, 70], [70, 70, 74, 74]))).toHaveLength(1);
		expect(laidOutGarments(labels([5, 5, 60, 75], [70, 10, 82, 22]))).toHaveLength(1);
	});

	it('are too many to split on a rail or in a heap', () => {
		const rail = Array.from({ length: 9 }, (_, at) => [at * 11, 5, at * 11 + 9, 70] as const);
		expect(laidOutGarments(labels(...rail))).toEqual([]);
	});
});

describe('a proposal to split a photo', () => {
	it('puts one garment into each part', () => {
		const { pieces, boxes } = splitProposal([
			{ left: 0.05, top: 0.1, right: 0.45, bottom: 0.9 },
			{ left: 0.55, top: 0.2, right: 0.95, bottom: 0.8 },
		]);
		expect(pieces).toBe(2);
		expect(boxes[0].right).toBeLessThan(boxes[1].left);
	});

	it('cuts where the parts overlap least, and leaves the others together', () => {
		const { pieces, boxes } = splitProposal([
			{ left: 0.1, top: 0.05, right: 0.9, bottom: 0.4 },
			{ left: 0.1, top: 0.5, right: 0.5, bottom: 0.95 },
			{ left: 0.5, top: 0.5, right: 0.9, bottom: 0.95 },
		]);
		expect(pieces).toBe(3);
		expect(boxes[0].bottom).toBeLessThan(boxes[1].top);
		expect(boxes[1].right - boxes[1].left).toBeGreaterThan(0.7);
	});
});
