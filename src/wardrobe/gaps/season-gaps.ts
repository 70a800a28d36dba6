import { rangeOf, type Tally } from '../pairs/outfit-range.ts';
import { outfitTallies } from '../pairs/outfit-tallies.ts';
import type { PairTable } from '../pairs/pair-table.ts';
import { picturesOf } from '../pictures/picture.ts';
import { wearableBoard } from '../pictures/wearable-pictures.ts';
import { type WishedPiece, wishedPieces } from '../pictures/wished-pieces.ts';
import type { Garment } from '../words/garment.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { type Bands, bandsOf } from './bands.ts';
import type { Gap } from './gap.ts';
import { gapsOf, gapsShownBefore } from './gaps.ts';
import { imaginedAs, type MissingPiece, missingPiecesOf, piecesToTry } from './missing-piece.ts';
import { pieceGapsAmong, wishedAmong } from './piece-gap.ts';

/** What a set of garments leaves open, and the outfits that it makes. */
export type SeasonGaps = {
	readonly bands: Bands;
	readonly missingPieces: readonly MissingPiece[];
	readonly gaps: readonly Gap[];
	/** Outfits of what is held for the season's days. */
	readonly outfits: Tally;
	/** What each of the other pieces asked about would add, in their order. */
	readonly added: readonly Tally[];
};

/**
 * Bands, missing pieces and gaps of what is held, counted in one go. `wished`: what the pictures wear and nothing answers; `others`: further pieces, not owned, whose
 * outfits are asked for; `owned` holds at least the pairs of `held`.
 */
export function seasonGaps(
	input: SeasonInput,
	held: readonly Garment[],
	wished: readonly WishedPiece[],
	{ others = [], owned }: { readonly others?: readonly Garment[]; readonly owned?: PairTable } = {},
): SeasonGaps {
	const tried = piecesToTry(input.palette);
	const asked = pieceGapsAmong(wished, wishedAmong(gapsShownBefore(input)));
	const tallies = outfitTallies(
		input,
		held,
		[...tried.map(({ garment }) => garment), ...asked.map(imaginedAs), ...others],
		owned,
	);
	const bands = bandsOf(input.palette, held);
	const missing = missingPiecesOf(tried, tallies);
	const facts = {
		bands,
		pictures: picturesOf(input.inspirations),
		wished: asked.map((piece, index) => ({ piece, outfitsAdded: rangeOf(tallies.added[tried.length + index]!) })),
		missing,
		names: new Map(input.garments.map(({ id, name }) => [id, name])),
	};
	return {
		bands,
		missingPieces: missing,
		gaps: gapsOf(input, facts, held),
		outfits: tallies.held,
		added: tallies.added.slice(tried.length + asked.length),
	};
}

/** What the season's report says is missing, without the rest of the report. */
export function gapsNow(input: SeasonInput): readonly Gap[] {
	const shown = wishedAmong(gapsShownBefore(input));
	return seasonGaps(input, heldGarments(input), wishedPieces(wearableBoard(input), input.garments, shown)).gaps;
}
