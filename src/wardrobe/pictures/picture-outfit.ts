import type { Garment } from '../words/garment.ts';
import type { Piece } from '../words/reading.ts';
import type { Picture, SeenPiece } from './picture.ts';
import { answersTo, HAS_IT_WITHIN, likelihoodOf, NEAR_IT_WITHIN, type PieceAnswer } from './piece-answer.ts';

/** What the wardrobe has for one piece of a picture. */
export type AnsweredPiece = {
	readonly piece: SeenPiece;
	/** The garment that answers it, or the nearest one where it is `missing`; null where nothing of its slot is owned. */
	readonly garmentId: string | null;
	readonly answer: PieceAnswer;
};

const NOTHING: PieceAnswer = { degree: 'missing', distance: null, because: 'kind' };

/** A distance to compare by: nothing to compare is farther than anything. */
const far = ({ distance }: PieceAnswer): number => distance ?? Number.POSITIVE_INFINITY;

type Option = { readonly garment: number; readonly answer: PieceAnswer; readonly cost: number };

/** A kind that cannot be is as bad as a colour so far away (in the widths of its degree); chosen on street outfits, bench/kinds/retrieval.ts. */
const UNLIKELY = 2;

/**
 * What an answer costs: any `near it` more than any number of `has it`, any `missing` more than any number of `near it`; among equals the nearer
 * colour and the likelier kind cost less.
 */
export function costOf(answer: PieceAnswer, likelihood: number): number {
	if (answer.degree === 'missing') return 1e3;
	const width = answer.degree === 'has it' ? HAS_IT_WITHIN : NEAR_IT_WITHIN;
	return (answer.degree === 'has it' ? 0 : 1) + (far(answer) / width + UNLIKELY * (1 - likelihood)) / 1e3;
}

const NO_ANSWER = costOf(NOTHING, 1);

/** The options of one piece that an exact assignment may need: with n pieces the n best ones, since others take n - 1 at most. */
function optionsOf(piece: Piece, picture: Picture, garments: readonly Garment[], pieces: number): Option[] {
	const answered: Option[] = [];
	const answerOf = answersTo(piece, picture.trust);
	for (const [index, garment] of garments.entries()) {
		const answer = answerOf(garment);
		if (answer && answer.degree !== 'missing')
			answered.push({ garment: index, answer, cost: costOf(answer, likelihoodOf(piece, garment.kind)) });
	}
	return answered.sort((one, other) => one.cost - other.cost || one.garment - other.garment).slice(0, pieces);
}

/** The cheapest way to give each piece a garment of its own or none, by trying all that can still be better. */
function bestAssignment(options: readonly (readonly Option[])[]): (Option | null)[] {
	const least = options.map((own) => own[0]?.cost ?? NO_ANSWER);
	const leastFrom = least.map((_, at) => least.slice(at).reduce((sum, cost) => sum + cost, 0));
	let best: (Option | null)[] = options.map(() => null);
	let bestCost = Number.POSITIVE_INFINITY;
	const taken = new Set<number>();
	const chosen: (Option | null)[] = [];
	const go = (at: number, cost: number): void => {
		if (cost + (leastFrom[at] ?? 0) >= bestCost) return;
		if (at === options.length) {
			best = [...chosen];
			bestCost = cost;
			return;
		}
		for (const option of [...options[at]!, null]) {
			if (option && taken.has(option.garment)) continue;
			if (option) taken.add(option.garment);
			chosen.push(option);
			go(at + 1, cost + (option?.cost ?? NO_ANSWER));
			chosen.pop();
			if (option) taken.delete(option.garment);
		}
	};
	go(0, 0);
	return best;
}

/** The nearest garment of the piece's slot, however far: what a missing piece is compared with. */
function nearestOwned(piece: Piece, picture: Picture, garments: readonly Garment[]): Omit<AnsweredPiece, 'piece'> {
	let nearest: Omit<AnsweredPiece, 'piece'> = { garmentId: null, answer: NOTHING };
	const answerOf = answersTo(piece, picture.trust);
	for (const garment of garments) {
		const answer = answerOf(garment);
		if (answer && far(answer) < far(nearest.answer))
			nearest = { garmentId: garment.id, answer: { ...answer, degree: 'missing' } };
	}
	return nearest;
}

/**
 * The picture worn from what is owned: each piece with the garment that answers it, a garment for one piece only. Exact: as few missing as can
 * be, then as few near ones, then the least distance; ties to the earlier garment. Accessories come after the pieces.
 */
export function answersOf(picture: Picture, garments: readonly Garment[]): AnsweredPiece[] {
	const pieces = [...picture.pieces, ...picture.accessories];
	const options = pieces.map((piece) => optionsOf(piece, picture, garments, pieces.length));
	return bestAssignment(options).map((option, at) => ({
		piece: pieces[at]!,
		...(option
			? { garmentId: garments[option.garment]!.id, answer: option.answer }
			: nearestOwned(pieces[at]!, picture, garments)),
	}));
}
