import type { Piece, Reading, Trust } from '../words/reading.ts';
import type { Inspiration } from '../words/season.ts';
import { SLOTS } from '../words/slot.ts';
import { toldReading } from '../words/told-reading.ts';

/** A piece of a picture with its place among the reading's pieces, and whether somebody told its kind. */
export type SeenPiece = Piece & { readonly place: number; readonly told: boolean };

/** A board's picture as the judgements see it. */
export type Picture = {
	readonly inspirationId: string;
	readonly title: string;
	/** What is worn in it, accessories apart; the largest first. */
	readonly pieces: readonly SeenPiece[];
	readonly accessories: readonly SeenPiece[];
	readonly trust: Trust;
};

/** A piece under this share of the frame is not looked at: too few pixels tell its kind and colour. Measured on outfits: pieces of 1 % or more. */
const LEAST_SHARE = 0.01;

/**
 * Pieces of a reading made before pieces were told: one a slot, of no known kind. Their shares are of the clothes, since the frame's are not
 * known any more.
 */
function piecesBySlot(reading: Reading): Piece[] {
	return SLOTS.flatMap((slot) => {
		const own = reading.swatches.filter((swatch) => swatch.slot === slot);
		const share = own.reduce((sum, swatch) => sum + swatch.share, 0);
		if (share === 0) return [];
		const swatches = own.map(({ lab, name, share: part }) => ({ lab, name, share: part / share }));
		const pattern = reading.patternBySlot[slot] ?? reading.pattern;
		return [{ slot, kind: null, kinds: [], share, pattern, swatches }];
	});
}

/** The pieces of a reading with what the user said of them; none unless clothes are worn or laid out in it. */
export function piecesOf(reading: Reading, told: Inspiration['pieceKinds'] = []): SeenPiece[] {
	if (reading.photoKind !== 'worn' && !reading.pieces) return [];
	const pieces = toldReading(reading, told).pieces ?? piecesBySlot(reading);
	return pieces.map((piece, place) => ({ ...piece, place, told: told.some((one) => one.piece === place) }));
}

/** The pictures of a board that show pieces, in the board's order; pieces the user took away are left out. */
export function picturesOf(
	board: readonly { readonly inspiration: Inspiration; readonly reading: Reading }[],
): Picture[] {
	return board
		.map(({ inspiration, reading }) => {
			const seen = piecesOf(reading, inspiration.pieceKinds).filter(({ share }) => share >= LEAST_SHARE);
			const bySize = [...seen].sort((one, other) => other.share - one.share);
			return {
				inspirationId: inspiration.id,
				title: inspiration.title,
				pieces: bySize.filter(({ slot }) => slot !== 'accessory'),
				accessories: bySize.filter(({ slot }) => slot === 'accessory'),
				trust: reading.trust,
			};
		})
		.filter(({ pieces }) => pieces.length > 0);
}
