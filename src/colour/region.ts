import { deltaE2000Of } from './delta-e-many.ts';
import type { Lab65 } from './lab65.ts';
import { medianLab } from './median-lab.ts';

/** A picture as CIELAB triples, row by row. */
export type LabPicture = { readonly labs: Float32Array; readonly width: number; readonly height: number };

export type RegionOptions = {
	/** How far a pixel may differ and still belong, CIEDE2000 with lightness counted half; default 10. */
	readonly tolerance?: number;
	/** How much a step between neighbouring pixels counts on top, 0 (edges do not matter) or more; default 0.5. */
	readonly edgeWeight?: number;
};

/** Lightness differences count half: folds and shadow of one cloth change lightness most. The same reason as in clustering. */
const LIGHTNESS_WEIGHT = 0.5;

/** Steps of a cost a CIEDE2000 unit; a cost is one byte, so that costs end at 63.75. */
const STEPS_PER_UNIT = 4;
const COSTLIEST = 255;

/** Half the side of the square around the tap whose median colour is what the region should be like: a single pixel may be noise. */
const TAP_RADIUS = 2;

/** Median of each CIELAB axis in the square around a point, cut at the picture's border. */
function colourAround({ labs, width, height }: LabPicture, x: number, y: number): Lab65 {
	const [top, bottom] = [Math.max(0, y - TAP_RADIUS), Math.min(height - 1, y + TAP_RADIUS)];
	const [left, right] = [Math.max(0, x - TAP_RADIUS), Math.min(width - 1, x + TAP_RADIUS)];
	const count = (right - left + 1) * 3;
	const around = new Float32Array((bottom - top + 1) * count);
	for (let row = top; row <= bottom; row++) {
		const from = (row * width + left) * 3;
		around.set(labs.subarray(from, from + count), (row - top) * count);
	}
	return medianLab(around);
}

/**
 * What it costs to reach each pixel from a tap, one byte each in quarters of a CIEDE2000 unit: the greatest step on the cheapest way there, where a
 * step costs the pixel's difference from the tapped colour plus a part of the edge crossed (seeded region growing after Adams and
 * Bischof 1994, with the region's colour fixed so that it cannot drift). 255 = not reached. Thresholding it again is free, so a slider can follow live.
 * Throws `RangeError` for a tap outside the picture.
 */
export function regionCosts(picture: LabPicture, x: number, y: number, edgeWeight = 0.5): Uint8Array {
	const { labs, width, height } = picture;
	if (!(x >= 0 && x < width && y >= 0 && y < height) || !Number.isInteger(x) || !Number.isInteger(y))
		throw new RangeError(`Expected a tap inside ${width} x ${height}; received ${x}, ${y}.`);
	const [L0, a0, b0] = colourAround(picture, x, y);
	const costs = new Uint8Array(width * height).fill(COSTLIEST);
	const settled = new Uint8Array(width * height);
	const buckets: number[][] = Array.from({ length: COSTLIEST }, () => []);

	// Each pixel's own cost is worked out once, though up to four neighbours ask for it.
	const likenesses = new Float32Array(width * height).fill(-1);
	const likeness = (pixel: number): number => {
		if (likenesses[pixel]! < 0) {
			const L = L0 + LIGHTNESS_WEIGHT * (labs[pixel * 3]! - L0);
			likenesses[pixel] = deltaE2000Of(L0, a0, b0, L, labs[pixel * 3 + 1]!, labs[pixel * 3 + 2]!);
		}
		return likenesses[pixel]!;
	};
	const edge = (one: number, other: number): number => {
		const L = labs[one * 3]! - labs[other * 3]!;
		const a = labs[one * 3 + 1]! - labs[other * 3 + 1]!;
		const b = labs[one * 3 + 2]! - labs[other * 3 + 2]!;
		return Math.sqrt(L * L + a * a + b * b);
	};
	const reach = (from: number, to: number, sofar: number) => {
		if (settled[to]) return;
		const step = STEPS_PER_UNIT * (likeness(to) + edgeWeight * edge(from, to));
		const cost = Math.max(sofar, Math.min(COSTLIEST, Math.round(step)));
		if (cost >= costs[to]!) return;
		costs[to] = cost;
		buckets[cost]!.push(to);
	};

	const start = y * width + x;
	// The tapped pixel belongs whatever it looks like.
	costs[start] = 0;
	buckets[0]!.push(start);
	for (let cost = 0; cost < COSTLIEST; cost++) {
		const bucket = buckets[cost]!;
		// A pixel may join the bucket that is being emptied, so its length is asked anew.
		for (let index = 0; index < bucket.length; index++) {
			const pixel = bucket[index]!;
			if (settled[pixel]) continue;
			settled[pixel] = 1;
			const column = pixel % width;
			if (column > 0) reach(pixel, pixel - 1, cost);
			if (column < width - 1) reach(pixel, pixel + 1, cost);
			if (pixel >= width) reach(pixel, pixel - width, cost);
			if (pixel < width * (height - 1)) reach(pixel, pixel + width, cost);
		}
	}
	return costs;
}

/** The pixels that belong to a tap: 255 inside, 0 outside, row by row. The region is connected and holds the tapped pixel. */
export function growRegion(picture: LabPicture, x: number, y: number, options: RegionOptions = {}): Uint8Array {
	const { tolerance = 10, edgeWeight } = options;
	const most = Math.min(COSTLIEST - 1, Math.max(0, Math.round(tolerance * STEPS_PER_UNIT)));
	return regionCosts(picture, x, y, edgeWeight).map((cost) => (cost <= most ? 255 : 0));
}
