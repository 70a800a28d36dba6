import { kindProbabilities, type PieceKinds } from '../../../reading/kinds/kind-probabilities.ts';
import type { MarkedPiece } from '../../../reading/kinds/marked-pieces.ts';
import { pieceBox } from '../../../reading/kinds/piece-box.ts';
import { pieceCrop } from '../../../reading/kinds/piece-crop.ts';
import { pieceNumbers } from '../../../reading/kinds/piece-numbers.ts';
import type { OutlinePicture } from '../../../reading/outline/outline-picture.ts';
import type { LabelMap, Pixels } from '../../../reading/pixels.ts';
import { frameMask } from './frame-mask.ts';
import { kindScores, type PieceInput } from './kinds-network.ts';

function inputOf(pixels: Pixels, labels: LabelMap, { slot, marks }: MarkedPiece, picture: OutlinePicture): PieceInput {
	const box = pieceBox(marks, pixels.widthPx, 1, 1);
	if (!box) throw new RangeError('expected at least one marked pixel for a piece; received none');
	return {
		slot,
		crop: pieceCrop(pixels, marks, box),
		mask: frameMask(marks, pixels.widthPx, picture.frame),
		numbers: pieceNumbers(box, labels),
	};
}

/**
 * What each of the marked pieces of one photo may be, in their order. `labels`: the class of every pixel, at the size of `pixels`; `picture`: what the outline
 * network was shown of the same pixels (`parsePhoto`). Each piece has at least one pixel. No piece: nothing is loaded or computed.
 */
export async function kindsOfPieces(
	pixels: Pixels,
	labels: LabelMap,
	pieces: readonly MarkedPiece[],
	picture: OutlinePicture,
): Promise<PieceKinds[]> {
	if (pieces.length === 0) return [];
	const scores = await kindScores(
		pieces.map((piece) => inputOf(pixels, labels, piece, picture)),
		picture,
	);
	return pieces.map(({ slot, slotTold }, index) => kindProbabilities(scores[index]!, slotTold ? slot : null));
}
