import type { Garment } from '../words/garment.ts';
import type { Piece, Trust } from '../words/reading.ts';
import type { PieceChances } from './completing.ts';
import { answerOf } from './piece-answer.ts';
import type { WearableBoard } from './wearable-pictures.ts';

/** The one piece that keeps a picture from being worn. */
export type MissingOfPicture = { readonly piece: Piece; readonly trust: Trust };

/** For each picture that only one piece keeps from being worn, that piece. */
export function missingPiecesOfPictures({ board, wearable }: WearableBoard): MissingOfPicture[] {
	return wearable.flatMap(({ away, answers }, index) => {
		const missing = answers.find(({ piece, answer }) => piece.slot !== 'accessory' && answer.degree === 'missing');
		return away === 1 && missing ? [{ piece: missing.piece, trust: board[index]!.trust }] : [];
	});
}

/** Pictures that a garment likely completes: the chances, see `pieceChances`, of all pieces that it would answer. */
export function likelyCompleted(
	{ board, wearable }: WearableBoard,
	chances: readonly (readonly PieceChances[])[],
	garment: Garment,
): number {
	let sum = 0;
	for (const [index, { answers }] of wearable.entries())
		for (const [at, { piece }] of answers.entries()) {
			const chance = chances[index]![at]!.completing;
			if (chance > 0 && answersMissing({ piece, trust: board[index]!.trust }, garment)) sum += chance;
		}
	return sum;
}

/** Whether such a garment would make the picture wearable. */
export const answersMissing = ({ piece, trust }: MissingOfPicture, garment: Garment): boolean =>
	(answerOf(piece, trust, garment)?.degree ?? 'missing') !== 'missing';
