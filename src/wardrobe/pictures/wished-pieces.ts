import { deltaE2000Matrix, distanceBetween, packLabs } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { completeLinkage, groupsWithin } from '../../colour/linkage.ts';
import type { Garment } from '../words/garment.ts';
import type { Kind } from '../words/kind.ts';
import { slotOfKind } from '../words/kind.ts';
import { familyOfKind, type KindFamily } from '../words/kind-family.ts';
import type { Piece, Trust } from '../words/reading.ts';
import type { Slot } from '../words/slot.ts';
import { steadyOrder } from '../words/steady-order.ts';
import { type PieceChances, pieceChances } from './completing.ts';
import type { Picture } from './picture.ts';
import type { AnsweredPiece } from './picture-outfit.ts';
import { possibleKinds } from './piece-answer.ts';
import type { WearableBoard } from './wearable-pictures.ts';

/** Missing pieces whose colours lie within this of each other are one wish: the width of a palette colour, CIEDE2000, measured on six boards. */
const ONE_COLOUR_WITHIN = 20;

/** So many pictures must likely lack a piece before it is wished for, and so many where it was wished for before: what lies at the edge does not come and go. */
const LACKS_FROM = 0.5;
const STILL_LACKS_FROM = 0.25;
/** From here on a picture may lack a piece that something owned answers today. */
const MAY_LACK_FROM = 0.25;

/** A piece that pictures wear and nothing owned answers, or perhaps nothing. */
export type WishedPiece = {
	/** Stays the same while the board and its readings do. */
	readonly id: string;
	readonly slot: Slot;
	readonly family: KindFamily | null;
	/** The kind that most of its pictures show; null where no kind is known. */
	readonly kind: Kind | null;
	/** How sure that kind is: the mean probability over its pictures, 0..1; 1 where the user told it. */
	readonly kindSure: number;
	/** The colour of the member nearest to all others. */
	readonly lab: Lab65;
	/** CIEDE2000 from it to the farthest member. */
	readonly spread: number;
	/** The piece in that colour, as its picture shows it, and how far the picture can be believed. */
	readonly example: Piece;
	readonly exampleTrust: Trust;
	/** True where something owned answers it today, in every picture, but so barely that other photos may say otherwise. */
	readonly perhaps: boolean;
	/** The inspiration that shows the example. */
	readonly exampleIn: string;
	/** Pictures that lack it, or perhaps lack it, and those that it alone would make wearable, both by inspiration. */
	readonly pictures: readonly string[];
	readonly completes: readonly string[];
	/** The same as a number that reckons with the photos' errors, see `pieceChances`: what the order is by. */
	readonly completesLikely: number;
	/** Pictures that likely lack it, reckoned in the same way. */
	readonly lacksLikely: number;
	/** Pictures that show such a piece, owned or not. */
	readonly shownIn: number;
	/** Share of the board's worn cloth, 0..1. */
	readonly share: number;
	/** The owned garment that comes nearest, whatever its kind in the slot; null where nothing of the slot is owned. */
	readonly nearestGarmentId: string | null;
	readonly nearestDistance: number | null;
};

type Member = AnsweredPiece & { readonly picture: Picture; readonly kind: Kind | null; readonly chance: PieceChances };

/** The distance to the nearest owned garment; infinite where there is none. */
const far = ({ answer }: Member): number => answer.distance ?? Number.POSITIVE_INFINITY;

const mainLab = ({ swatches }: Piece): Lab65 => swatches[0]!.lab;

/** The commonest value, the earlier on ties. */
function commonest<T>(values: readonly T[]): T {
	const counts = new Map<T, number>();
	for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
	return [...counts].reduce((most, one) => (one[1] > most[1] ? one : most))[0];
}

/** All pieces of the board by what they are: a family of kinds, or a slot where no kind is known. */
function piecesByFamily(
	{ board, wearable }: WearableBoard,
	chances: readonly (readonly PieceChances[])[],
): Map<string, Member[]> {
	const groups = new Map<string, Member[]>();
	for (const [index, { answers }] of wearable.entries()) {
		for (const [at, answered] of answers.entries()) {
			const kind = possibleKinds(answered.piece)[0] ?? null;
			const group = kind ? familyOfKind(kind) : `slot ${answered.piece.slot}`;
			const member = { ...answered, picture: board[index]!, kind, chance: chances[index]![at]! };
			const members = groups.get(group);
			if (members) members.push(member);
			else groups.set(group, [member]);
		}
	}
	return groups;
}

/** One wish a colour: complete linkage, so that no wish is wider than a palette colour may be. */
function byColour(members: readonly Member[]): Member[][] {
	const labs = packLabs(members.map(({ piece }) => mainLab(piece)));
	const joins = completeLinkage(members.length, deltaE2000Matrix(labs, labs));
	return groupsWithin(members.length, joins, ONE_COLOUR_WITHIN).map((group) => group.map((index) => members[index]!));
}

/** The member whose colour lies nearest to all, so that a wish shows a colour that a picture really wears; and how far the others lie from it. */
function middleOf(members: readonly Member[]): { readonly middle: Member; readonly spread: number } {
	const distances = (from: Member) => members.map(({ piece }) => distanceBetween(mainLab(from.piece), mainLab(piece)));
	const total = (from: Member) => distances(from).reduce((sum, distance) => sum + distance, 0);
	const middle = members.reduce((best, one) => (total(one) < total(best) ? one : best));
	return { middle, spread: Math.max(...distances(middle)) };
}

const isMissing = ({ answer }: Member): boolean => answer.degree === 'missing';

function wishedPiece(all: readonly Member[], awayOf: ReadonlyMap<string, number>, worn: number): WishedPiece {
	const lacking = all.filter(isMissing);
	const perhaps = lacking.length === 0;
	const members = perhaps ? all.filter(({ chance }) => chance.missing >= MAY_LACK_FROM) : lacking;
	const { middle, spread } = middleOf(all);
	const { place: _place, told: _told, ...example } = middle.piece;
	const lab = mainLab(middle.piece);
	const kind = commonest(all.map((member) => member.kind));
	const nearest = (members.length > 0 ? members : all).reduce((best, one) => (far(one) < far(best) ? one : best));
	const pictures = [...new Set(members.map(({ picture }) => picture.inspirationId))];
	const sureness = all.map(({ piece }) => (piece.kind ? 1 : (piece.kinds[0]?.probability ?? 0)));
	return {
		id: `${kind ?? middle.piece.slot} ${lab.map((value) => Math.round(value)).join(' ')}`,
		slot: kind ? slotOfKind(kind) : middle.piece.slot,
		family: kind ? familyOfKind(kind) : null,
		kind,
		kindSure: sureness.reduce((total, one) => total + one, 0) / sureness.length,
		lab,
		spread,
		example: { ...example, kind: kind === middle.kind ? example.kind : kind },
		exampleTrust: middle.picture.trust,
		perhaps,
		exampleIn: middle.picture.inspirationId,
		pictures,
		completes: pictures.filter((id) => awayOf.get(id) === 1 && lacking.some((one) => isWorn(one, id))),
		completesLikely: all.reduce((sum, { chance }) => sum + chance.completing, 0),
		lacksLikely: all.reduce((sum, { chance }) => sum + chance.missing, 0),
		shownIn: new Set(all.map(({ picture }) => picture.inspirationId)).size,
		share: all.reduce((total, { piece }) => total + piece.share, 0) / Math.max(worn, Number.EPSILON),
		nearestGarmentId: nearest.garmentId,
		nearestDistance: nearest.garmentId === null ? null : nearest.answer.distance,
	};
}

/** Whether the member is a piece of that picture that counts for wearing it: an accessory does not. */
const isWorn = ({ picture, piece }: Member, id: string): boolean =>
	picture.inspirationId === id && piece.slot !== 'accessory';

/** Half a picture: what is worth less than that apart changes places when the clothes are photographed again, see `bench/stability.ts`. */
export const WORTH_STEP = 0.5;

/** Most completions first; of those that photos cannot tell apart the one that more pictures show, then more cloth. */
const byWorth = (one: WishedPiece, other: WishedPiece): number =>
	other.completesLikely - one.completesLikely ||
	other.shownIn - one.shownIn ||
	other.share - one.share ||
	(one.id < other.id ? -1 : 1);

/**
 * The pieces to look for: what pictures show and likely nothing owned answers, near-equal ones together, ordered by the pictures that one such piece likely makes wearable. Accessories come in the
 * same order and complete nothing. `before`: ids of those that were wished for before, in their order: they stay while it is not clear that something answers them, and keep their places until one is worth clearly more.
 */
export function wishedPieces(
	worn: WearableBoard,
	garments: readonly Garment[],
	before: readonly string[] = [],
): WishedPiece[] {
	const { board, wearable } = worn;
	const awayOf = new Map(wearable.map(({ inspirationId, away }) => [inspirationId, away]));
	const cloth = board.reduce((sum, { pieces }) => sum + pieces.reduce((area, { share }) => area + share, 0), 0);
	const shown = new Set(before);
	const likely = [...piecesByFamily(worn, pieceChances(worn, garments)).values()]
		.flatMap(byColour)
		.map((members) => wishedPiece(members, awayOf, cloth))
		.filter(({ id, lacksLikely }) => lacksLikely >= (shown.has(id) ? STILL_LACKS_FROM : LACKS_FROM))
		.sort(byWorth);
	return steadyOrder(
		likely,
		({ id }) => id,
		({ completesLikely }) => completesLikely,
		{ before, step: WORTH_STEP },
	);
}
