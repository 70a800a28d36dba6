import { boxAround } from '../box.ts';
import type { Pixels } from '../pixels.ts';

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
	const edgesOf = (start: number, count: number) =>
		Int32Array.from({ length: count + 1 }, (_, place) => start + Math.floor(place * scale));
	const columns = edgesOf(bounds.left, widthPx);
	const rows = edgesOf(bounds.top, heightPx);
	const rgb = new Uint8Array(widthPx * heightPx * 3);
	const inside = new Uint8Array(widthPx * heightPx);
	for (let row = 0, cell = 0; row < heightPx; row++) {
		const [v0, v1] = [rows[row]!, rows[row + 1]!];
		for (let column = 0; column < widthPx; column++, cell++) {
			const u0 = columns[column]!;
			const across = columns[column + 1]! - u0;
			let r = 0;
			let g = 0;
			let b = 0;
			let isCloth = 1;
			for (let v = v0; v < v1; v++) {
				for (let at = v * pixels.widthPx + u0, end = at + across; at < end; at++) {
					r += pixels.rgb[at * 3]!;
					g += pixels.rgb[at * 3 + 1]!;
					b += pixels.rgb[at * 3 + 2]!;
					if (marks[at] !== wanted) isCloth = 0;
				}
			}
			const count = across * (v1 - v0);
			inside[cell] = isCloth;
			// Cutting off what follows the point rounds: none is negative.
			rgb[cell * 3] = r / count + 0.5;
			rgb[cell * 3 + 1] = g / count + 0.5;
			rgb[cell * 3 + 2] = b / count + 0.5;
		}
	}
	return { widthPx, heightPx, scale, rgb, inside };
}
