import type { Garment } from '../words/garment.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { type Picture, picturesOf } from './picture.ts';
import { type AnsweredPiece, answersOf } from './picture-outfit.ts';

/** One picture and how far it can be worn. */
export type WearablePicture = {
	readonly inspirationId: string;
	readonly answers: readonly AnsweredPiece[];
	/** Pieces, accessories apart, that nothing answers. 0 = it can be worn now. */
	readonly away: number;
	/** Of those answered, how many only come near. */
	readonly near: number;
	/** True where a garment that answers is stored. */
	readonly fromStore: boolean;
};

/** Each picture with what the garments make of it, in the pictures' order. Garments that are leaving or gone are no answer. */
export function wearablePictures(pictures: readonly Picture[], garments: readonly Garment[]): WearablePicture[] {
	const owned = garments.filter(({ place }) => place === 'rail' || place === 'stored');
	const stored = new Set(owned.filter(({ place }) => place === 'stored').map(({ id }) => id));
	return pictures.map((picture) => {
		const answers = answersOf(picture, owned);
		const worn = answers.filter(({ piece }) => piece.slot !== 'accessory');
		const answered = worn.filter(({ answer }) => answer.degree !== 'missing');
		return {
			inspirationId: picture.inspirationId,
			answers,
			away: worn.length - answered.length,
			near: answered.filter(({ answer }) => answer.degree === 'near it').length,
			fromStore: answered.some(({ garmentId }) => garmentId !== null && stored.has(garmentId)),
		};
	});
}

/** A board with what the garments make of each of its pictures, in the board's order. */
export type WearableBoard = {
	readonly board: readonly Picture[];
	readonly wearable: readonly WearablePicture[];
};

/** The season's board as it can be worn now. */
export function wearableBoard({
	inspirations,
	garments,
}: Pick<SeasonInput, 'inspirations' | 'garments'>): WearableBoard {
	const board = picturesOf(inspirations);
	return { board, wearable: wearablePictures(board, garments) };
}
