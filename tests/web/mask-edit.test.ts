import { describe, expect, it } from 'vitest';
import {
	clothesShare,
	maskFromLabels,
	paintDisc,
	paintStroke,
	undone,
	withRegion,
	withStroke,
} from '../../web/src/photo/mask-edit.ts';

const size = { width: 20, height: 10 };
const empty = () => ({ ...size, mask: new Uint8Array(200), before: [] });

describe('correcting the outline', () => {
	it('the seven slots are clothes; background, skin and hair are not', () => {
		expect([...maskFromLabels(Uint8Array.from([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]))]).toEqual([
			0, 255, 255, 255, 255, 255, 255, 255, 0, 0,
		]);
	});

	it('a region is taken, dropped, and each step can be taken back', () => {
		const region = new Uint8Array(200).fill(255, 0, 50);
		const taken = withRegion(empty(), region, true);
		expect(clothesShare(taken)).toBe(0.25);
		const dropped = withRegion(taken, region, false);
		expect(clothesShare(dropped)).toBe(0);
		expect(clothesShare(undone(dropped))).toBe(0.25);
		expect(undone(undone(undone(dropped))).mask).toEqual(empty().mask);
	});

	it('a disc at the border stays inside the picture and has the area of its part of a circle', () => {
		const mask = new Uint8Array(200 * 200);
		paintDisc(mask, { width: 200, height: 200 }, 0, 0, 80, true);
		const painted = mask.reduce((sum, value) => sum + (value ? 1 : 0), 0);
		// A quarter of a circle, pi r^2 / 4.
		expect(painted / ((Math.PI * 80 * 80) / 4)).toBeCloseTo(1, 1);
	});

	it('a fast stroke leaves no gap', () => {
		const mask = new Uint8Array(200);
		paintStroke(mask, size, { x: 2, y: 5 }, { x: 17, y: 5 }, 2, true);
		for (let x = 1; x <= 18; x++) expect(mask[5 * 20 + x]).toBe(255);
		expect(withStroke(empty(), mask).before).toHaveLength(1);
	});
});
