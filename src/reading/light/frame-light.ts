import { LINEAR_OF_8_BIT } from '../../colour/lab-pixels.ts';
import { luminanceOfLinear } from '../../colour/luminance.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses, TRANSPARENT } from '../pixels.ts';

/** How the light lies in a picture. */
export type FrameLight = {
	/** Luminance 0..1 that a quarter of what lies around, near the picture's edges, stays below; null where clothes fill it. */
	readonly surround: number | null;
	/** Whether more than half of what lies around has one and the same value: made on a computer, as a shop's cut-out is. */
	readonly isFlat: boolean;
	/** Linear red, green and blue (0..1) of the whole picture, one sampled pixel after the other. */
	readonly lights: Float32Array;
};

/** What lies within this share of the shorter side from an edge is around the thing photographed, which lies in the middle. */
const EDGE_SHARE = 0.15;
/** Fewer of the sampled pixels than this share tell nothing of the surround. */
const LEAST_SHARE = 0.02;
/** Pixels looked at along the longer side, about. */
const LOOKED_AT_SIDE = 220;

/** Measures the picture's light; `labels` null (a scene) counts all of it as surround near the edges. Transparent pixels are no light. */
export function frameLight(pixels: Pixels, labels: LabelMap | null): FrameLight {
	const { widthPx, heightPx, rgb } = pixels;
	const classes = labels ? seenClasses(pixels, labels) : null;
	const edge = EDGE_SHARE * Math.min(widthPx, heightPx);
	const step = Math.max(1, Math.round(Math.max(widthPx, heightPx) / LOOKED_AT_SIDE));
	const all: number[] = [];
	const around: number[] = [];
	for (let row = 0; row < heightPx; row += step) {
		for (let column = 0; column < widthPx; column += step) {
			const at = row * widthPx + column;
			const label = classes ? classes[at]! : BACKGROUND;
			if (label === TRANSPARENT) continue;
			const r = LINEAR_OF_8_BIT[rgb[at * 3]!]!;
			const g = LINEAR_OF_8_BIT[rgb[at * 3 + 1]!]!;
			const b = LINEAR_OF_8_BIT[rgb[at * 3 + 2]!]!;
			all.push(r, g, b);
			const isNearEdge = Math.min(row, column, heightPx - 1 - row, widthPx - 1 - column) < edge;
			if (isNearEdge && label === BACKGROUND) around.push(luminanceOfLinear(r, g, b));
		}
	}
	const ring = Float64Array.from(around).sort();
	const isSeen = ring.length > 0 && ring.length >= (LEAST_SHARE * all.length) / 3;
	const surround = isSeen ? ring[ring.length >> 2]! : null;
	return { surround, isFlat: surround !== null && hasMode(ring), lights: Float32Array.from(all) };
}

/** Share of the picture, 0..1, whose linear red, green and blue are such; 0 for a picture without a pixel. */
export function shareOf({ lights }: FrameLight, isSuch: (r: number, g: number, b: number) => boolean): number {
	let count = 0;
	for (let at = 0; at < lights.length; at += 3) if (isSuch(lights[at]!, lights[at + 1]!, lights[at + 2]!)) count++;
	return lights.length === 0 ? 0 : (3 * count) / lights.length;
}

/** Whether one value fills more than half of a rising list: then it stands in the middle, and half the list further on or back. */
function hasMode(rising: Float64Array): boolean {
	const middle = rising[rising.length >> 1];
	return rising.filter((value) => value === middle).length > rising.length / 2;
}
