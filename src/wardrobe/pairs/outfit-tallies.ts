import { ALIKE_FACTOR, alikeCount, variedWeights } from '../fit/look-alikes.ts';
import { rereadsOf } from '../fit/rereads.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { Slot } from '../words/slot.ts';
import { countOutfits } from './outfit-count.ts';
import type { Tally } from './outfit-range.ts';
import { type OutfitTable, outfitShapes, outfitTable, shapesWith } from './outfits.ts';
import { CODE, codeByColour, SUPPORTED_UNDER } from './pair-codes.ts';
import { pairContextOf } from './pair-context.ts';
import { pairFacts } from './pair-facts.ts';
import { type PairTable, pairTable } from './pair-table.ts';
import type { PairContext } from './support.ts';

/** Re-reads that a count is held against: enough to say in which tenth it falls. */
const ROUNDS = 12;
const SEED = 1;

/** Outfits of what is held, and what pieces that are not owned would add to them. */
export type OutfitTallies = {
	readonly held: Tally;
	/** In the order of the pieces. */
	readonly added: readonly Tally[];
	/** What a piece of that slot and look which goes with everything would add, as read. */
	readonly most: readonly number[];
};

/** With more outfits than this nobody asks how many: they are counted as read only, and said in round numbers. */
const BEYOND_RANGES = 2000;

/** One count of outfits: of what is held, and through each piece. */
type OutfitCounts = { readonly held: number; readonly added: readonly number[] };

type Goes = OutfitTable['goes'];

/** The same answers, each worked out once and only when it is asked for. */
function remembered(count: number, decide: Goes): Goes {
	const known = new Uint8Array(count * count);
	return (one, other) => {
		const cell = one < other ? one * count + other : other * count + one;
		if (known[cell] === 0) known[cell] = decide(one, other) ? 2 : 1;
		return known[cell] === 2;
	};
}

/** Which pairs go together by colour, where the user has said nothing and done nothing; `said` is null there. */
function goesByColour(
	garments: readonly Garment[],
	context: PairContext,
	said: (one: number, other: number) => boolean | null,
): Goes {
	const facts = pairFacts(garments, context);
	return remembered(
		garments.length,
		(one, other) => said(one, other) ?? codeByColour(facts, one, other) < SUPPORTED_UNDER,
	);
}

/** The garments as each re-read has them. */
function rereadGarments(garments: readonly Garment[]): Garment[][] {
	return rereadsOf(garments, SEED)
		.slice(0, ROUNDS)
		.map(({ shifted }) =>
			garments.map((garment, index) => ({
				...garment,
				swatches: garment.swatches.map((swatch) => ({ ...swatch, lab: shifted(index, swatch.lab) })),
			})),
		);
}

/** What garments are ordered by before some are drawn: their photos, not ids, which a home draws by chance. */
const photosOf = ({ id, photoIds }: Garment): string => `${photoIds.join(' ')} ${id}`;

/**
 * Outfits of the held garments for the season's days, and what each of `pieces` would add, as read and in re-reads. Garments of another part of the year are in none; of n that look
 * alike each further one counts half, and so does a piece that looks like what is held. `owned` holds at least the pairs of `held`; what it knows of the pieces counts too.
 */
export function outfitTallies(
	input: SeasonInput,
	heldGarments: readonly Garment[],
	pieces: readonly Garment[],
	owned?: PairTable,
): OutfitTallies {
	const context = pairContextOf(input);
	const held = [...heldGarments].sort((a, b) => (photosOf(a) < photosOf(b) ? -1 : 1));
	const pairs = owned ?? pairTable(held, context);
	const rowOf = new Map(pairs.garments.map(({ id }, index) => [id, index]));
	const all = [...held, ...pieces];
	const rows = all.map(({ id }) => rowOf.get(id) ?? null);
	const codeOf = (one: number, other: number): number | null => {
		const [a, b] = [rows[one]!, rows[other]!];
		return a === null || b === null ? null : pairs.codes[a * pairs.garments.length + b]!;
	};
	const asRead = goesByColour(all, context, (one, other) => {
		const code = codeOf(one, other);
		return code === null ? null : code < SUPPORTED_UNDER;
	});
	const said = (one: number, other: number) => {
		const code = codeOf(one, other);
		return code === CODE.approved || code === CODE.worn ? true : code === CODE.no ? false : null;
	};
	const table = outfitTable(all, asRead, input.season);
	const weights = [...variedWeights(held), ...pieces.map((piece) => ALIKE_FACTOR ** alikeCount(piece, held))];
	const members = [...held.keys()];
	const heldShapes = outfitShapes(table, members);
	const shapes = pieces.map((_, index) => {
		const piece = held.length + index;
		return table.inSeason[piece] ? shapesWith(outfitShapes(table, [...members, piece]), piece) : [];
	});
	const counted = (goes: Goes): OutfitCounts => {
		const among = { ...table, goes };
		return {
			held: countOutfits(among, heldShapes, weights),
			added: shapes.map((own) => countOutfits(among, own, weights)),
		};
	};
	const first = counted(asRead);
	const again =
		first.held >= BEYOND_RANGES
			? []
			: rereadGarments(all).map((garments) => counted(goesByColour(garments, context, said)));
	const mostOf = new Map<Slot, number>();
	const most = pieces.map(({ kind }, index) => {
		const slot = slotOfKind(kind);
		const piece = held.length + index;
		const goes: Goes = (one, other) => one === piece || other === piece || asRead(one, other);
		const weight = weights[piece]!;
		// Every outfit through the piece counts its weight once, which differs from look to look.
		if (!mostOf.has(slot)) mostOf.set(slot, countOutfits({ ...table, goes }, shapes[index]!, weights) / weight);
		return mostOf.get(slot)! * weight;
	});
	return {
		held: [first.held, ...again.map((round) => round.held)],
		added: pieces.map((_, index) => [first.added[index]!, ...again.map((round) => round.added[index]!)]),
		most,
	};
}
