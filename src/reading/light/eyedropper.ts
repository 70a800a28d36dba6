import { labFromPixels } from '../../colour/lab-pixels.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { medianLab } from '../../colour/median-lab.ts';
import type { Pixels } from '../pixels.ts';

/** Half the side of the patch that a point stands for, as a share of the longest side. */
const PATCH_SHARE = 1 / 150;
/** Share of the patch nearest to its median colour that the mean is taken of: a button or a speck does not count. */
const KEPT_SHARE = 0.6;

/** Bytes from here up in all three channels are burnt out: no colour is left in them (JPEG rounds). */
const BURNT = 250;

/** A small patch of a picture. */
export type SeenPatch = {
	/** Its robust mean colour. */
	readonly lab: Lab65;
	/** Share of it that is burnt out in all channels, 0..1. */
	readonly burntShare: number;
};

/** The robust mean colour of a small patch around a point of the picture; points outside take the nearest edge. */
export const patchColour = (pixels: Pixels, x: number, y: number): Lab65 => seenPatch(pixels, x, y).lab;

/** The patch around a point, and how much of it is burnt out; points outside take the nearest edge. */
export function seenPatch(pixels: Pixels, x: number, y: number): SeenPatch {
	const { widthPx, heightPx, rgb } = pixels;
	const radius = Math.max(1, Math.round(Math.max(widthPx, heightPx) * PATCH_SHARE));
	const [column, row] = [
		Math.min(widthPx - 1, Math.max(0, Math.round(x))),
		Math.min(heightPx - 1, Math.max(0, Math.round(y))),
	];
	const bytes: number[] = [];
	for (let v = Math.max(0, row - radius); v <= Math.min(heightPx - 1, row + radius); v++) {
		for (let u = Math.max(0, column - radius); u <= Math.min(widthPx - 1, column + radius); u++) {
			bytes.push(...rgb.subarray((v * widthPx + u) * 3, (v * widthPx + u) * 3 + 3));
		}
	}
	const labs = labFromPixels(Uint8Array.from(bytes), 3);
	const points = Array.from(
		{ length: labs.length / 3 },
		(_, i) => [labs[i * 3]!, labs[i * 3 + 1]!, labs[i * 3 + 2]!] as const,
	);
	const middle = medianLab(labs);
	const distance = (point: readonly number[]) =>
		Math.hypot(point[0]! - middle[0], point[1]! - middle[1], point[2]! - middle[2]);
	const kept = points
		.sort((a, b) => distance(a) - distance(b))
		.slice(0, Math.max(1, Math.ceil(points.length * KEPT_SHARE)));
	const lab = [0, 1, 2].map((axis) => kept.reduce((sum, point) => sum + point[axis]!, 0) / kept.length);
	return { lab: lab as unknown as Lab65, burntShare: burntShare(bytes) };
}

function burntShare(bytes: readonly number[]): number {
	let burnt = 0;
	for (let at = 0; at < bytes.length; at += 3) {
		if (bytes[at]! >= BURNT && bytes[at + 1]! >= BURNT && bytes[at + 2]! >= BURNT) burnt++;
	}
	return burnt / (bytes.length / 3);
}
