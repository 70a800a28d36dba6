import { isInSeason } from '../days/in-season.ts';
import type { Garment } from '../words/garment.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { type Picture, picturesOf } from './picture.ts';
import { type AnsweredPiece, answersOf } from './picture-outfit.ts';
import { answersTo } from './piece-answer.ts';

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
	/** True where a stored garment would answer a missing piece, but is for another part of the year. */
	readonly storedForLater: boolean;
};

type PartOfTheYear = Parameters<typeof isInSeason>[1];

/** Whether one of these garments, which are no answer this season, would answer a missing piece. */
const wouldAnswer = (missing: readonly AnsweredPiece[], { trust }: Picture, later: readonly Garment[]): boolean =>
	later.length > 0 &&
	missing.some(({ piece }) => {
		const answerOf = answersTo(piece, trust);
		return later.some((garment) => (answerOf(garment)?.degree ?? 'missing') !== 'missing');
	});

/**
 * Each picture with what the garments make of it, in the pictures' order. A stored garment is an answer where it is in season; one that is leaving or gone
 * is none.
 */
export function wearablePictures(
	pictures: readonly Picture[],
	garments: readonly Garment[],
	season: PartOfTheYear,
): WearablePicture[] {
	const isStored = ({ place }: Garment) => place === 'stored';
	const later = garments.filter((garment) => isStored(garment) && !isInSeason(garment, season));
	const owned = garments.filter(
		(garment) => garment.place === 'rail' || (isStored(garment) && !later.includes(garment)),
	);
	const stored = new Set(owned.filter(isStored).map(({ id }) => id));
	return pictures.map((picture) => {
		const answers = answersOf(picture, owned);
		const worn = answers.filter(({ piece }) => piece.slot !== 'accessory');
		const answered = worn.filter(({ answer }) => answer.degree !== 'missing');
		const missing = worn.filter(({ answer }) => answer.degree === 'missing');
		return {
			inspirationId: picture.inspirationId,
			answers,
			away: missing.length,
			near: answered.filter(({ answer }) => answer.degree === 'near it').length,
			fromStore: answered.some(({ garmentId }) => garmentId !== null && stored.has(garmentId)),
			storedForLater: wouldAnswer(missing, picture, later),
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
	season,
}: Pick<SeasonInput, 'inspirations' | 'garments' | 'season'>): WearableBoard {
	const board = picturesOf(inspirations);
	return { board, wearable: wearablePictures(board, garments, season) };
}
