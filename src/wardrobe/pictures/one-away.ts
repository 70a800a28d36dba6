import type { Garment } from '../words/garment.ts';
import type { Piece, Trust } from '../words/reading.ts';
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

/** Whether such a garment would make the picture wearable. */
export const answersMissing = ({ piece, trust }: MissingOfPicture, garment: Garment): boolean =>
	(answerOf(piece, trust, garment)?.degree ?? 'missing') !== 'missing';
