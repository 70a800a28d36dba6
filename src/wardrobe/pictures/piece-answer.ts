import type { Garment } from '../words/garment.ts';
import type { Kind } from '../words/kind.ts';
import { KIND_NAMES, slotOfKind } from '../words/kind.ts';
import { familyOfKind, type KindFamily } from '../words/kind-family.ts';
import { seenSwatches } from '../words/main-colour.ts';
import { distanceAcrossPhotos } from '../words/photo-distance.ts';
import { looksPlain, SURE_OF_PATTERN } from '../words/plain-looking.ts';
import type { Piece, Trust } from '../words/reading.ts';

/**
 * Colours this far apart (CIEDE2000) still stand in for each other in an outfit, and this far they come near. Measured on street outfits and a real
 * wardrobe: bench/NOTES.md, Pictures.
 */
export const HAS_IT_WITHIN = 12;
export const NEAR_IT_WITHIN = 18;

export type AnswerDegree = 'has it' | 'near it' | 'missing';

/** How far one garment answers one piece. */
export type PieceAnswer = {
	readonly degree: AnswerDegree;
	/** CIEDE2000 between their colours, weighed by area; lightness counts less where the light of a photo is not told. Null without colours. */
	readonly distance: number | null;
	/** What keeps it from being `has it`, the weightiest; null where nothing does. */
	readonly because: 'kind' | 'colour' | 'pattern' | null;
};

/** Kinds that the piece may be: the one that is said, else the two likeliest. */
export const possibleKinds = ({ kind, kinds }: Piece): readonly Kind[] =>
	kind ? [kind] : kinds.slice(0, 2).map((likely) => likely.kind);

/** Families that the piece may be of; empty where only its slot is known. */
export const possibleFamilies = (piece: Piece): ReadonlySet<KindFamily> =>
	new Set(possibleKinds(piece).map(familyOfKind));

/**
 * How likely the piece is of this kind's family, among the kinds that it may be, 0..1; 1 where nothing speaks against it: the kind is said, or only the
 * slot is known.
 */
export function likelihoodOf(piece: Piece, kind: Kind): number {
	if (piece.kind || piece.kinds.length === 0) return 1;
	const offered = piece.kinds.slice(0, 2);
	const sum = offered.reduce((total, { probability }) => total + probability, 0);
	const own = offered.filter((one) => familyOfKind(one.kind) === familyOfKind(kind));
	return sum === 0 ? 1 : own.reduce((total, { probability }) => total + probability, 0) / sum;
}

/** A waistcoat, cardigan or hoodie is kept among tops and worn over one too: where a kind may be worn, by the slots of a picture. */
const wornAs = (kind: Kind): readonly string[] =>
	kind === 'cardigan' || kind === 'waistcoat' || kind === 'hoodie' ? ['top', 'outer'] : [slotOfKind(kind)];

type KindMatch = 'family' | 'slot' | null;

/** For each kind, whether a garment of it may be worn where the piece is, and whether it is of its family. */
function kindMatches(piece: Piece): ReadonlyMap<Kind, KindMatch> {
	const families = possibleFamilies(piece);
	const match = (kind: Kind): KindMatch => {
		if (families.has(familyOfKind(kind))) return 'family';
		// No hat stands in for a bag: accessories have nothing in common but their slot.
		if (!wornAs(kind).includes(piece.slot) || (piece.slot === 'accessory' && families.size > 0)) return null;
		return families.size === 0 ? 'family' : 'slot';
	};
	return new Map(KIND_NAMES.map((kind) => [kind, match(kind)]));
}

/** Mean distance from each seen colour of the piece to the nearest seen one of a garment, by area; null without colours. */
function colourDistanceOf(
	piece: Piece,
	pieceTrust: Trust,
): (garment: Pick<Garment, 'swatches' | 'trust'>) => number | null {
	const seen = seenSwatches(piece);
	const area = seen.reduce((sum, { share }) => sum + share, 0);
	return (garment) => {
		const own = seenSwatches(garment);
		if (seen.length === 0 || own.length === 0) return null;
		const trusts = [pieceTrust, garment.trust] as const;
		return seen.reduce((sum, { lab, share }) => {
			let nearest = Number.POSITIVE_INFINITY;
			for (const swatch of own) nearest = Math.min(nearest, distanceAcrossPhotos(lab, swatch.lab, trusts));
			return sum + nearest * (share / area);
		}, 0);
	};
}

const patternsDiffer = (one: Piece['pattern'], other: Piece['pattern']): boolean =>
	looksPlain(one) !== looksPlain(other) && Math.min(one.sure, other.sure) >= SURE_OF_PATTERN;

type Answering = Pick<Garment, 'kind' | 'swatches' | 'trust' | 'pattern'>;

/** {@link answerOf} for many garments: what only depends on the piece is worked out once. */
export function answersTo(piece: Piece, pieceTrust: Trust): (garment: Answering) => PieceAnswer | null {
	const matches = kindMatches(piece);
	const colourDistance = colourDistanceOf(piece, pieceTrust);
	return (garment) => {
		const match = matches.get(garment.kind);
		if (!match) return null;
		const distance = colourDistance(garment);
		if (distance === null || distance > NEAR_IT_WITHIN) return { degree: 'missing', distance, because: 'colour' };
		const because =
			match === 'slot'
				? 'kind'
				: distance > HAS_IT_WITHIN
					? 'colour'
					: patternsDiffer(piece.pattern, garment.pattern)
						? 'pattern'
						: null;
		// Two things that do not fit at once are one too many.
		const far = match === 'slot' && (distance > HAS_IT_WITHIN || patternsDiffer(piece.pattern, garment.pattern));
		return { degree: far ? 'missing' : because === null ? 'has it' : 'near it', distance, because };
	};
}

/**
 * How far a garment answers a piece of a picture, or null where it is worn somewhere else altogether. `has it`: kind family, colour and pattern
 * come near enough; `near it`: one of them does not, but not by far.
 */
export const answerOf = (piece: Piece, pieceTrust: Trust, garment: Answering): PieceAnswer | null =>
	answersTo(piece, pieceTrust)(garment);
