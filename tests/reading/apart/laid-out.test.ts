import { describe, expect, it } from 'vitest';
import { clothRegions, laidOutGarments, splitProposal } from '../../../src/reading/apart/laid-out.ts';

const [widthPx, heightPx] = [100, 80];
type Box = readonly [left: number, top: number, right: number, bottom: number];
/** Each pixel's garment, by its box. */
const marks = (...boxes: readonly Box[]) =>
	Uint8Array.from({ length: widthPx * heightPx }, (_, at) => {
		const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
		return boxes.findIndex(([left, top, right, bottom]) => x >= left && x < right && y >= top && y < bottom) + 1;
	});
const regions = (...boxes: readonly Box[]) =>
	clothRegions({ widthPx, heightPx, classes: marks(...boxes).map((mark) => Number(mark > 0)) });

describe('regions of cloth', () => {
	it('are counted where ground lies between them', () => {
		expect(regions([5, 5, 30, 70], [50, 10, 95, 70])).toBe(2);
		expect(regions([5, 5, 50, 70], [50, 10, 95, 70])).toBe(1);
	});

	it('are not specks, nor what broke off one garment', () => {
		expect(regions([5, 5, 60, 70], [70, 70, 74, 74])).toBe(1);
		expect(regions([5, 5, 60, 75], [70, 10, 82, 22])).toBe(1);
	});
});

describe('garments of one photo', () => {
	it('come largest first, each in its box', () => {
		const garments = laidOutGarments(marks([5, 5, 30, 70], [50, 10, 95, 70]), widthPx);
		expect(garments.map(({ box }) => [box.left, box.right])).toEqual([
			[50, 95],
			[5, 30],
		]);
	});

	it('are not specks', () => {
		expect(laidOutGarments(marks([5, 5, 60, 70], [70, 70, 74, 74]), widthPx)).toHaveLength(1);
	});

	it('are too many to split on a rail or in a heap', () => {
		const rail = Array.from({ length: 9 }, (_, at) => [at * 11, 5, at * 11 + 9, 70] as const);
		expect(laidOutGarments(marks(...rail), widthPx)).toEqual([]);
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
