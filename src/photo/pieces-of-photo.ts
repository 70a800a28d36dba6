import { type MarkedPiece, markedPieces } from '../reading/kinds/marked-pieces.ts';
import type { OutlinePicture } from '../reading/outline/outline-picture.ts';
import type { LabelMap } from '../reading/pixels.ts';
import { KIND_SURE_FROM } from '../wardrobe/words/kind.ts';
import type { Pattern, Piece } from '../wardrobe/words/reading.ts';
import type { Slot } from '../wardrobe/words/slot.ts';
import { kindsOfPieces } from './networks/kinds/kinds.ts';
import { patternOf } from './networks/pattern/pattern.ts';
import { kindsKept, ownSwatches, type PictureOfPieces, sureKind } from './piece-of-photo.ts';

/** What is known of a worn picture when its pieces are told. */
export type WornPicture = PictureOfPieces & {
	readonly labels: LabelMap;
	readonly shown: OutlinePicture;
	readonly patterns: ReadonlyMap<Slot, Pattern>;
};

/** What is marked is taken for no piece at all from this probability on: more likely than not. */
const NO_PIECE_FROM = 0.5;

/** The colours of a piece: those of its slot where it is alone there, else its own. */
function swatchesOfPiece(picture: WornPicture, piece: MarkedPiece, alone: boolean): Piece['swatches'] {
	const own = picture.read.swatches.filter(({ slot }) => slot === piece.slot);
	if (!alone || own.length === 0) return ownSwatches(picture, piece);
	const area = own.reduce((sum, { share }) => sum + share, 0);
	return own.map(({ lab, share, name }) => ({ lab, share: share / area, name }));
}

/**
 * The pieces of a picture of somebody dressed, the largest first: slot, kinds by likelihood, colours, pattern, share of the frame. Empty where nothing
 * reaches a hundredth of the frame. A piece's kind is said only where it is sure.
 */
export async function piecesOfPhoto(picture: WornPicture): Promise<Piece[]> {
	const { pixels, labels, shown, patterns, pictureScale } = picture;
	const marked = markedPieces(labels);
	const told = await kindsOfPieces(pixels, labels, marked, shown);
	const pieces: Piece[] = [];
	for (const [index, one] of marked.entries()) {
		const { nothing } = told[index]!;
		if (nothing >= NO_PIECE_FROM) continue;
		const kinds = kindsKept(picture, told[index]!.kinds);
		const alone = marked.filter(({ slot }) => slot === one.slot).length === 1;
		const swatches = swatchesOfPiece(picture, one, alone);
		if (swatches.length === 0) continue;
		const ofSlot = alone ? patterns.get(one.slot) : undefined;
		pieces.push({
			slot: one.slot,
			kind: sureKind(kinds, KIND_SURE_FROM),
			kinds,
			share: one.area / labels.classes.length,
			pattern: ofSlot ?? (await patternOf(pixels, one.marks, 1, swatches, pictureScale)),
			swatches,
		});
	}
	return pieces.sort((one, other) => other.share - one.share);
}
