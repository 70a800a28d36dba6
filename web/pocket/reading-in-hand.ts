import { PAPER_LIGHTNESS } from '../../src/reading/light/light.ts';
import { BACKGROUND, labelOfSlot, type Pixels } from '../../src/reading/pixels.ts';
import { type PixelReading, readingOfPixels } from '../../src/reading/reading-of-pixels.ts';
import { type Kind, slotOfKind } from '../../src/wardrobe/words/kind.ts';

/** A point of the picture, in pixels. */
export type Point = { readonly x: number; readonly y: number };

/**
 * The piece in hand, read as every photo at home is. `mask`: a byte a pixel, 1 = piece; `white`: where the user tapped paper, or null. Null
 * where nothing is marked.
 */
export function readingInHand(pixels: Pixels, mask: Uint8Array, kind: Kind, white: Point | null): PixelReading | null {
	const label = labelOfSlot(slotOfKind(kind));
	const { widthPx, heightPx } = pixels;
	const labels = { widthPx, heightPx, classes: mask.map((inside) => (inside === 1 ? label : BACKGROUND)) };
	return readingOfPixels(pixels, labels, {
		correction: white ? { neutral: { ...white, lightness: PAPER_LIGHTNESS } } : {},
	});
}
