import type { Kind } from '../../wardrobe/words/kind.ts';
import { SLOTS, type Slot } from '../../wardrobe/words/slot.ts';
import { TOLD_KINDS } from './told-kinds.ts';

/** A kind that a piece may be, with its probability, 0..1. */
export type LikelyKind = { readonly kind: Kind; readonly probability: number };

/** What a worn piece may be. */
export type PieceKinds = {
	/** Kinds, likeliest first; their probabilities sum to at most 1, the rest is "no piece" and kinds without a word. */
	readonly kinds: readonly LikelyKind[];
	/** Probability that what is marked is no piece at all, 0..1. */
	readonly nothing: number;
};

/** Kinds under this are not worth showing. */
const LEAST_PROBABILITY = 0.02;

/** Probabilities of the scores at these places, which sum to 1. */
function shares(scores: Float32Array, places: readonly number[]): number[] {
	let most = Number.NEGATIVE_INFINITY;
	for (const place of places) most = Math.max(most, scores[place]!);
	const powers = places.map((place) => Math.exp(scores[place]! - most));
	const sum = powers.reduce((total, power) => total + power, 0);
	return powers.map((power) => power / sum);
}

const PLACES_BY_SLOT = SLOTS.map((slot) => TOLD_KINDS.flatMap((told, place) => (told.slot === slot ? [place] : [])));
const SLOT_PLACES = [...SLOTS, null].map((_, index) => TOLD_KINDS.length + index);

/**
 * What a piece may be, from its scores (`SCORE_COUNT` of them): each slot's probability times the kind's within its slot, since what the outline
 * calls a skirt may be a dress. With `certain`, the slot that somebody has told, only its kinds count.
 */
export function kindProbabilities(scores: Float32Array, certain: Slot | null = null): PieceKinds {
	const ofSlots = certain ? [...SLOTS.map((slot) => (slot === certain ? 1 : 0)), 0] : shares(scores, SLOT_PLACES);
	const kinds: LikelyKind[] = [];
	for (const [index, places] of PLACES_BY_SLOT.entries()) {
		for (const [at, share] of shares(scores, places).entries()) {
			const { kind } = TOLD_KINDS[places[at]!]!;
			const probability = ofSlots[index]! * share;
			if (kind && probability >= LEAST_PROBABILITY) kinds.push({ kind, probability });
		}
	}
	kinds.sort((a, b) => b.probability - a.probability);
	return { kinds, nothing: ofSlots[SLOTS.length]! };
}
