import { boxAround } from './box.ts';
import type { Pixels } from './pixels.ts';

/** One cloth cut out of a picture and shrunk. */
export type ClothPicture = {
	readonly widthPx: number;
	readonly heightPx: number;
	/** Pixels of the picture per pixel of this one, 1 or more. */
	readonly scale: number;
	/** Three bytes a pixel, row by row: the mean of what was shrunk together. */
	readonly rgb: Uint8Array;
	/** One byte a pixel: 1 where all that was shrunk together is cloth. */
	readonly inside: Uint8Array;
};

/**
 * The cloth whose mark is `wanted`, cut out along its bounds; its longer side is brought to `side` pixels by averaging, never enlarged, so that
 * folds and weave are about as large in every photo. Null where no pixel has the mark.
 */
export function clothPicture(pixels: Pixels, marks: Uint8Array, wanted: number, side: number): ClothPicture | null {
	const bounds = boxAround(marks, pixels.widthPx, (mark) => mark === wanted);
	if (!bounds) return null;
	const scale = Math.max(1, Math.max(bounds.width, bounds.height) / side);
	const widthPx = Math.max(1, Math.floor(bounds.width / scale));
	const heightPx = Math.max(1, Math.floor(bounds.height / scale));
	const rgb = new Uint8Array(widthPx * heightPx * 3);
	const inside = new Uint8Array(widthPx * heightPx);
	for (let row = 0, cell = 0; row < heightPx; row++) {
		const [v0, v1] = [bounds.top + Math.floor(row * scale), bounds.top + Math.floor((row + 1) * scale)];
		for (let column = 0; column < widthPx; column++, cell++) {
			const [u0, u1] = [bounds.left + Math.floor(column * scale), bounds.left + Math.floor((column + 1) * scale)];
			let [r, g, b, own] = [0, 0, 0, 0];
			for (let v = v0; v < v1; v++) {
				for (let u = u0, at = v * pixels.widthPx + u0; u < u1; u++, at++) {
					r += pixels.rgb[at * 3]!;
					g += pixels.rgb[at * 3 + 1]!;
					b += pixels.rgb[at * 3 + 2]!;
					if (marks[at] === wanted) own++;
				}
			}
			const count = (u1 - u0) * (v1 - v0);
			inside[cell] = own === count ? 1 : 0;
			rgb[cell * 3] = Math.round(r / count);
			rgb[cell * 3 + 1] = Math.round(g / count);
			rgb[cell * 3 + 2] = Math.round(b / count);
		}
	}
	return { widthPx, heightPx, scale, rgb, inside };
}
