import { colourName } from '../colour/name.ts';
import type { MarkedPiece } from '../reading/kinds/marked-pieces.ts';
import type { Pixels } from '../reading/pixels.ts';
import type { PixelReading } from '../reading/reading-of-pixels.ts';
import { sampleOf } from '../reading/swatches/cloth-pixels.ts';
import { swatchesOf } from '../reading/swatches/swatches.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
import type { LikelyKind, Piece } from '../wardrobe/words/reading.ts';

/** A picture whose pieces are told. */
export type PictureOfPieces = {
	readonly pixels: Pixels;
	readonly read: PixelReading;
	/** Pixels of the upright original per analysed one. */
	readonly pictureScale: number;
	/** Probability that the picture shows no pieces at all (`Parse`). */
	readonly noPieces: number;
};

/** Kinds shown of an unsure piece, and kept for the user to choose from. */
const KINDS_KEPT = 4;

/** Up to here there is no doubt that a picture shows pieces: all of 135 kept-out outfits and 94 of 100 garments stay below. */
const NO_DOUBT = 0.1;

/** What a piece may be, the likeliest kinds alone: each as much less likely as it is in doubt that the picture shows pieces. */
export const kindsKept = ({ noPieces }: PictureOfPieces, kinds: readonly LikelyKind[]): LikelyKind[] =>
	kinds.slice(0, KINDS_KEPT).map(({ kind, probability }) => ({
		kind,
		probability: probability * Math.min(1, (1 - noPieces) / (1 - NO_DOUBT)),
	}));

/** The likeliest kind, where it is likely enough to be said; else null. */
export const sureKind = ([first]: readonly LikelyKind[], from: number): Kind | null =>
	first && first.probability >= from ? first.kind : null;

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
