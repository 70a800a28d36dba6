import { BACKGROUND, labelOfSlot, type Pixels } from '../../src/reading/pixels.ts';
import { type PixelReading, readingOfPixels } from '../../src/reading/reading-of-pixels.ts';
import { type Kind, slotOfKind } from '../../src/wardrobe/words/kind.ts';
import type { CameraKind } from '../../src/wardrobe/words/light.ts';
import type { NeutralPoint } from '../../src/wardrobe/words/reading.ts';

/** The photo in hand: its pixels and what took it. */
export type PhotoInHand = { readonly pixels: Pixels; readonly camera: CameraKind };

/**
 * The piece in hand, read as every photo at home is. `mask`: a byte a pixel, 1 = piece; `neutrals`: where the user tapped paper or a grey card.
 * Null where nothing is marked.
 */
export function readingInHand(
	{ pixels, camera }: PhotoInHand,
	mask: Uint8Array,
	kind: Kind,
	neutrals: readonly NeutralPoint[],
): PixelReading | null {
	const label = labelOfSlot(slotOfKind(kind));
	const { widthPx, heightPx } = pixels;
	const labels = { widthPx, heightPx, classes: mask.map((inside) => (inside === 1 ? label : BACKGROUND)) };
	return readingOfPixels(pixels, labels, { correction: { neutrals }, camera });
}
