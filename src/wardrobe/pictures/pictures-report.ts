import type { Garment } from '../words/garment.ts';
import type { AnsweredPiece } from './picture-outfit.ts';
import { answerSentence, boardSentence, wearableSentence, wishedPieceSentence } from './picture-sentences.ts';
import { pieceName } from './piece-name.ts';
import type { WearableBoard, WearablePicture } from './wearable-pictures.ts';
import { type WishedPiece, wishedPieces } from './wished-pieces.ts';

/** A piece with its name and what is said of it. */
export type ToldPiece = AnsweredPiece & { readonly name: string; readonly sentence: string };

/** What is said of a season's pictures. */
export type PicturesReport = {
	readonly sentence: string;
	/** Every picture that shows pieces: the wearable ones first, then by pieces missing, then in the board's order. */
	readonly pictures: readonly (Omit<WearablePicture, 'answers'> & {
		readonly title: string;
		readonly answers: readonly ToldPiece[];
		readonly sentence: string;
	})[];
	/** Pieces to look for, see `wishedPieces`. */
	readonly wishedPieces: readonly (WishedPiece & { readonly name: string; readonly sentence: string })[];
};

/** What the board wears, which pictures can be worn, and what to look for, see `wishedPieces`. Garments in storage count, those leaving do not. */
export function picturesReport(
	worn: WearableBoard,
	garments: readonly Garment[],
	wishedBefore: readonly string[] = [],
): PicturesReport {
	const { board, wearable } = worn;
	const names = new Map(garments.map(({ id, name }) => [id, name]));
	const told = wearable.map((picture, index) => {
		const { title, trust } = board[index]!;
		const answers = picture.answers.map((answered) => ({
			...answered,
			name: pieceName(answered.piece, trust),
			sentence: answerSentence(answered, names),
		}));
		return { ...picture, title, answers, sentence: wearableSentence(picture, trust) };
	});
	return {
		sentence: boardSentence(told),
		pictures: told.sort((one, other) => one.away - other.away || one.near - other.near),
		wishedPieces: wishedPieces(worn, garments, wishedBefore).map((piece) => ({
			...piece,
			name: pieceName(piece.example, piece.exampleTrust),
			sentence: wishedPieceSentence(piece, board.length, names),
		})),
	};
}
