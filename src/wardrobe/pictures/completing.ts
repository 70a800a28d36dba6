import type { Garment } from '../words/garment.ts';
import type { Trust } from '../words/reading.ts';
import type { AnsweredPiece } from './picture-outfit.ts';
import { HAS_IT_WITHIN, NEAR_IT_WITHIN } from './piece-answer.ts';
import type { WearableBoard } from './wearable-pictures.ts';

/**
 * Stated errors are lengths in three directions that 80 % of errors stay under; along the one that leads from garment to piece the error is normal
 * with this part of it as standard deviation (chi distribution with 3 degrees of freedom).
 */
const ERROR_TO_DEVIATION = 1 / 2.154;

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
	const deviation = Math.SQRT2 * Math.hypot(pictureTrust.error, garment.trust.error) * ERROR_TO_DEVIATION;
	return below((answer.distance - within) / Math.max(deviation, 0.1));
}

/** From here on a piece may well complete a picture; under it photos would have to err together. */
const MAY_COMPLETE_FROM = 0.25;

/**
 * Likely completions as a number of pictures that other photos of the same clothes would most likely tell again: 0 = none, 1 = perhaps one, from 1.5 on rounded. Between a piece that completes one picture today and one that
 * may do so after the next photo nothing decides.
 */
export const toldCompletions = (likely: number): number =>
	likely < MAY_COMPLETE_FROM ? 0 : Math.max(1, Math.round(likely));

/**
 * For each picture of the board, for each of its answers, how likely that piece alone keeps the picture from being worn, 0..1; 0 for accessories. Summed over pieces they say how many pictures a
 * garment completes, and change little when everything is photographed again.
 */
export function completingChances({ board, wearable }: WearableBoard, garments: readonly Garment[]): number[][] {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	return wearable.map(({ answers }, index) => {
		const missing = answers.map((answered) =>
			answered.piece.slot === 'accessory'
				? 0
				: missingChance(answered, board[index]!.trust, byId.get(answered.garmentId ?? '')),
		);
		return missing.map((chance, at) =>
			missing.reduce((product, other, place) => (place === at ? product : product * (1 - other)), chance),
		);
	});
}
