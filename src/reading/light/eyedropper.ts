import { labFromPixels } from '../../colour/lab-pixels.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { medianLab } from '../../colour/median-lab.ts';
import type { Pixels } from '../pixels.ts';

/** Half the side of the patch that a point stands for, as a share of the longest side. */
const PATCH_SHARE = 1 / 150;
/** Share of the patch nearest to its median colour that the mean is taken of: a button or a speck does not count. */
const KEPT_SHARE = 0.6;

/** The robust mean colour of a small patch around a point of the picture; points outside take the nearest edge. */
export function patchColour(pixels: Pixels, x: number, y: number): Lab65 {
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
	return [0, 1, 2].map((axis) => kept.reduce((sum, point) => sum + point[axis]!, 0) / kept.length) as unknown as Lab65;
}
