import { deviationOf } from '../fit/photo-deviation.ts';
import type { Garment } from '../words/garment.ts';
import type { Trust } from '../words/reading.ts';
import type { AnsweredPiece } from './picture-outfit.ts';
import { HAS_IT_WITHIN, NEAR_IT_WITHIN } from './piece-answer.ts';
import type { WearableBoard } from './wearable-pictures.ts';

/** Normal distribution function by a logistic one, within 0.01 (Tocher 1963). */
const below = (deviations: number): number => 1 / (1 + Math.exp(-deviations * 1.702));

/**
 * How likely nothing owned answers the piece, 0..1, when the photos' stated errors are reckoned with: a garment 17 away answers today, and may not
 * once it is photographed again.
 */
function missingChance({ answer }: AnsweredPiece, pictureTrust: Trust, garment: Garment | undefined): number {
	const isMissing = answer.degree === 'missing';
	if (answer.distance === null || !garment) return isMissing ? 1 : 0;
	const within = answer.because === 'kind' ? HAS_IT_WITHIN : NEAR_IT_WITHIN;
	// Near enough and missing all the same: another piece wears it, or two things do not fit at once.
	if (isMissing && answer.distance <= within) return 1;
	// Today's photo is one draw, the next another: their difference errs by the square root of 2 more than one.
	const deviation = Math.SQRT2 * Math.hypot(deviationOf(pictureTrust.error), deviationOf(garment.trust.error));
	return below((answer.distance - within) / Math.max(deviation, 0.1));
}

/** How likely one piece of a picture is missing, and how likely it alone keeps the picture from being worn, both 0..1. */
export type PieceChances = { readonly missing: number; readonly completing: number };

/**
 * For each picture of the board, for each of its answers, its chances when the photos' errors are reckoned with; an accessory keeps no picture from being worn. Summed over pieces they say how many pictures
 * a garment completes, and change little when everything is photographed again.
 */
export function pieceChances({ board, wearable }: WearableBoard, garments: readonly Garment[]): PieceChances[][] {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	return wearable.map(({ answers }, index) => {
		const missing = answers.map((answered) =>
			missingChance(answered, board[index]!.trust, byId.get(answered.garmentId ?? '')),
		);
		const isWorn = ({ piece }: AnsweredPiece) => piece.slot !== 'accessory';
		return answers.map((answered, at) => ({
			missing: missing[at]!,
			completing: isWorn(answered)
				? missing.reduce(
						(product, other, place) => (place === at || !isWorn(answers[place]!) ? product : product * (1 - other)),
						missing[at]!,
					)
				: 0,
		}));
	});
}
