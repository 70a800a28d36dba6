import { LINEAR_OF_8_BIT } from '../../colour/lab-pixels.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses, TRANSPARENT } from '../pixels.ts';

/** How the light lies in a picture. */
export type FrameLight = {
	/** Luminance 0..1 that a quarter of what lies around, near the picture's edges, stays below; null where clothes fill it. */
	readonly surround: number | null;
	/** Whether more than half of what lies around has one and the same value: made on a computer, as a shop's cut-out is. */
	readonly isFlat: boolean;
	/** Luminances of the whole picture, sampled, rising. */
	readonly luminances: Float64Array;
};

/** What lies within this share of the shorter side from an edge is around the thing photographed, which lies in the middle. */
const EDGE_SHARE = 0.15;
/** Fewer of the sampled pixels than this share tell nothing of the surround. */
const LEAST_SHARE = 0.02;
/** Pixels looked at along the longer side, about. */
const LOOKED_AT_SIDE = 220;

/** Luminance of one pixel, 0..1. */
export const luminanceAt = (rgb: Uint8Array, from: number): number =>
	0.2126 * LINEAR_OF_8_BIT[rgb[from]!]! +
	0.7152 * LINEAR_OF_8_BIT[rgb[from + 1]!]! +
	0.0722 * LINEAR_OF_8_BIT[rgb[from + 2]!]!;

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
			const Y = luminanceAt(rgb, at * 3);
			all.push(Y);
			const isNearEdge = Math.min(row, column, heightPx - 1 - row, widthPx - 1 - column) < edge;
			if (isNearEdge && label === BACKGROUND) around.push(Y);
		}
	}
	const luminances = Float64Array.from(all).sort();
	const ring = Float64Array.from(around).sort();
	const surround = ring.length < LEAST_SHARE * all.length || ring.length === 0 ? null : ring[ring.length >> 2]!;
	return { surround, isFlat: surround !== null && hasMode(ring), luminances };
}

/** Share of the picture, 0..1, that is brighter than `Y` times `factor`. */
export function shareBrighter({ luminances }: FrameLight, Y: number, factor: number): number {
	let [low, high] = [0, luminances.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if (luminances[middle]! > Y * factor) high = middle;
		else low = middle + 1;
	}
	return luminances.length === 0 ? 0 : 1 - low / luminances.length;
}

/** Whether one value fills more than half of a rising list: then it stands in the middle, and half the list further on or back. */
function hasMode(rising: Float64Array): boolean {
	const middle = rising[rising.length >> 1];
	return rising.filter((value) => value === middle).length > rising.length / 2;
}
