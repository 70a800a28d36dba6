import { say } from '../../language/speak.ts';
import { KIND_SURE_FROM } from '../words/kind.ts';
import type { Trust } from '../words/reading.ts';
import type { AnsweredPiece } from './picture-outfit.ts';
import { pieceName } from './piece-name.ts';
import type { WearablePicture } from './wearable-pictures.ts';
import type { WishedPiece } from './wished-pieces.ts';

/** Names of garments by id. */
export type NamesById = ReadonlyMap<string, string>;

const ANSWER_WORDS = {
	kind: 'answers.nearKind',
	colour: 'answers.nearColour',
	pattern: 'answers.nearPattern',
} as const;

/** What one garment is to one piece. */
export function answerSentence({ garmentId, answer }: AnsweredPiece, names: NamesById): string {
	const garment = garmentId === null ? undefined : names.get(garmentId);
	if (garment === undefined) return say('answers.nothing');
	if (answer.degree === 'missing') return say('answers.missing', { garment });
	return say(answer.because === null ? 'answers.has' : ANSWER_WORDS[answer.because], { garment });
}

/** Whether a picture can be worn, and what is missing. */
export function wearableSentence(picture: Omit<WearablePicture, 'sentence'>, trust: Trust): string {
	const { answers, away, near, fromStore, storedForLater } = picture;
	const missing = answers
		.filter(({ piece, answer }) => piece.slot !== 'accessory' && answer.degree === 'missing')
		.map(({ piece }) => pieceName(piece, trust));
	const first =
		away > 0
			? say('wearable.away', { count: away, pieces: missing.join('; ') })
			: near > 0
				? say('wearable.near', { count: near })
				: say('wearable.now');
	return [
		first,
		...(fromStore ? [say('wearable.fromStore')] : []),
		...(storedForLater ? [say('wearable.storedForLater')] : []),
	].join(' ');
}

/** How many pictures of the board can be worn, and how many are one piece away. */
export function boardSentence(pictures: readonly Pick<WearablePicture, 'away'>[]): string {
	if (pictures.length === 0) return say('wearable.none');
	const now = pictures.filter(({ away }) => away === 0).length;
	const oneAway = pictures.filter(({ away }) => away === 1).length;
	const first = say('wearable.summary', { count: now, total: pictures.length });
	return oneAway > 0 ? `${first} ${say('wearable.oneAway', { count: oneAway })}` : first;
}

/** Farther than this a garment of the slot is no help to the imagination: opposite colours begin about here (CIEDE2000). Our choice. */
const NEAREST_WITHIN = 40;

/** Why a piece is worth looking for. `total`: pictures of the board that show pieces. */
export function wishedPieceSentence(piece: WishedPiece, total: number, names: NamesById): string {
	const { pictures, completes, perhaps, shownIn, nearestGarmentId, nearestDistance, kindSure } = piece;
	const nearest = nearestGarmentId !== null && (nearestDistance ?? Number.POSITIVE_INFINITY) <= NEAREST_WITHIN;
	const garment = nearest ? names.get(nearestGarmentId) : undefined;
	const seen = (count: number) =>
		total === 1
			? say('wishedPieces.seenOnly')
			: count === total
				? say('wishedPieces.seenAll', { total })
				: say('wishedPieces.seen', { count, total });
	if (perhaps)
		return [seen(shownIn), say('wishedPieces.perhaps', { garment: names.get(nearestGarmentId ?? '') ?? '' })].join(' ');
	return [
		seen(pictures.length),
		completes.length > 0
			? say('wishedPieces.completes', { count: completes.length })
			: say('wishedPieces.completesNone'),
		garment === undefined ? say('wishedPieces.nothing') : say('wishedPieces.nearest', { garment }),
		...(kindSure < KIND_SURE_FROM ? [say('wishedPieces.unsure')] : []),
	].join(' ');
}
