import { colourName } from '../colour/name.ts';
import type { MarkedPiece } from '../reading/kinds/marked-pieces.ts';
import type { Pixels } from '../reading/pixels.ts';
import type { PixelReading } from '../reading/reading-of-pixels.ts';
import { sampleOf } from '../reading/swatches/cloth-pixels.ts';
import { swatchesOf } from '../reading/swatches/swatches.ts';
import type { Piece } from '../wardrobe/words/reading.ts';

/** A picture whose pieces are told. */
export type PictureOfPieces = {
	readonly pixels: Pixels;
	readonly read: PixelReading;
	/** Pixels of the upright original per analysed one. */
	readonly pictureScale: number;
};

/** Kinds shown of an unsure piece, and kept for the user to choose from. */
export const KINDS_KEPT = 4;

/** The colours of the marked pixels alone, heaviest first; their shares sum to 1. */
export function ownSwatches(
	{ pixels, read }: PictureOfPieces,
	{ slot, marks }: Pick<MarkedPiece, 'slot' | 'marks'>,
): Piece['swatches'] {
	// A little inside the edge where something is left there: a pixel on the edge is half background.
	const inside = marks.map((mark, at) => (mark === 1 && read.marks[at] !== 0 ? 1 : 0));
	const cloth = sampleOf(pixels, inside.includes(1) ? inside : marks, 1, slot);
	return swatchesOf([cloth]).map(({ lab, share }) => {
		const corrected = read.correct(lab);
		return { lab: corrected, share, name: colourName(corrected) };
	});
}
