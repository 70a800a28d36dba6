import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { growRegion, regionCosts } from '../../src/colour/region.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';

/** A picture painted pixel by pixel. */
function picture(width: number, height: number, colourAt: (x: number, y: number) => Lab65) {
	const labs = new Float32Array(width * height * 3);
	for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) labs.set(colourAt(x, y), (y * width + x) * 3);
	return { labs, width, height };
}

const insideOf = (mask: Uint8Array, width: number) =>
	[...mask.keys()]
		.filter((pixel) => mask[pixel] === 255)
		.map((pixel) => [pixel % width, Math.floor(pixel / width)] as const);

describe('growing a region from a tap', () => {
	const inSquare = (x: number, y: number) => x >= 10 && x < 30 && y >= 10 && y < 30;

	it('takes the whole noisy cloth and nothing of the floor', () => {
		const random = seededRandom('cloth');
		const noise = () => random() * 4 - 2;
		const shown = picture(40, 40, (x, y) =>
			inSquare(x, y) ? [45 + noise(), 38 + noise(), 40 + noise()] : [70 + noise(), 2 + noise(), 8 + noise()],
		);
		const inside = insideOf(growRegion(shown, 20, 20), 40);
		expect(inside).toHaveLength(400);
		expect(inside.every(([x, y]) => inSquare(x, y))).toBe(true);
	});

	it('follows a fold that only darkens the cloth', () => {
		const folded = picture(40, 40, (x, y) => (inSquare(x, y) ? [45 + 12 * Math.sin(x / 4), 38, 40] : [85, 0, 2]));
		expect(insideOf(growRegion(folded, 20, 20, { tolerance: 12 }), 40)).toHaveLength(400);
	});

	it('stops at an edge between two cloths of nearly one colour when edges count, and runs over it when they do not', () => {
		const seam = picture(40, 10, (x) => (x === 20 ? [60, 20, 20] : x < 20 ? [50, 20, 20] : [52, 21, 20]));
		const left = (edgeWeight: number) => insideOf(growRegion(seam, 5, 5, { tolerance: 7, edgeWeight }), 40);
		expect(left(1)).toHaveLength(200);
		expect(left(0)).toHaveLength(400);
	});

	it('never leaves the connected part that was tapped', () => {
		const islands = picture(40, 40, (x, y) => ((x < 10 || x > 30) && y < 40 ? [45, 38, 40] : [85, 0, 2]));
		expect(insideOf(growRegion(islands, 3, 3), 40).every(([x]) => x < 10)).toBe(true);
	});

	it('only grows with the tolerance, and always holds the tapped pixel', () => {
		const random = seededRandom('any picture');
		const noise = picture(30, 30, () => [random() * 100, random() * 80 - 40, random() * 80 - 40]);
		const costs = regionCosts(noise, 7, 7);
		expect(costs[7 * 30 + 7]).toBe(0);
		let before = 0;
		for (const tolerance of [0, 5, 20, 60]) {
			const area = insideOf(growRegion(noise, 7, 7, { tolerance }), 30).length;
			expect(area).toBeGreaterThanOrEqual(Math.max(1, before));
			before = area;
		}
	});

	it('works at a corner and on a single pixel, and refuses a tap outside', () => {
		const one = picture(1, 1, () => [50, 0, 0]);
		expect([...growRegion(one, 0, 0)]).toEqual([255]);
		expect(() => growRegion(one, 1, 0)).toThrow(RangeError);
		expect(() => growRegion(one, 0.5, 0)).toThrow(RangeError);
	});
});
