import { type OutfitRange, rangeOf } from '../pairs/outfit-range.ts';
import type { OutfitTallies } from '../pairs/outfit-tallies.ts';
import type { WishedPiece } from '../pictures/wished-pieces.ts';
import type { Garment } from '../words/garment.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../words/kind.ts';
import { newGarment } from '../words/new-garment.ts';
import { type Palette, type PaletteColour, vouchingColours } from '../words/palette-colour.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { Wish } from '../words/wish.ts';

/** What one more piece of a slot in a palette colour would add. */
export type MissingPiece = {
	readonly slot: Slot;
	readonly paletteColourId: string;
	/** Outfits for the season's days that it would add. */
	readonly outfitsAdded: OutfitRange;
	/** The same as a share of what a piece that goes with everything would add, 0..1; 0 where even that adds nothing. */
	readonly shareOfBest: number;
};

/** A first kind of the slot, to stand for a piece that is not there. */
const kindOfSlot = (slot: Slot): Kind => KIND_NAMES.find((kind) => slotOfKind(kind) === slot)!;

/** A plain piece of exactly these colours, known without doubt; nobody is told its name. */
function imaginedPiece(id: string, kind: Kind, colours: Garment['swatches']): Garment {
	return {
		...newGarment(id, '', '', { kind, kindFrom: 'user' }),
		swatches: colours,
		pattern: { type: 'plain', sure: 1 },
		trust: { error: 0, reasons: [], advice: null },
	};
}

/** A piece of the slot in exactly that colour. */
const imagined = (slot: Slot, { id, lab, name }: PaletteColour): Garment =>
	imaginedPiece(`imagined ${slot} ${id}`, kindOfSlot(slot), [{ lab, share: 1, slot, name }]);

/** The piece a wish looks for: its target colour, or the palette's heaviest where any will do. */
export function wishedPiece(wish: Wish, palette: Palette): Garment {
	const { slot, target } = wish;
	const [heaviest] = [...palette.colours].sort((a, b) => b.weight - a.weight);
	const lab = target ?? heaviest?.lab;
	return imaginedPiece(
		`imagined ${wish.id}`,
		wish.kind ?? kindOfSlot(slot),
		lab ? [{ lab, share: 1, slot, name: '' }] : [],
	);
}

/** A piece that pictures wear and nothing answers, as a plain garment in its colours. */
export const imaginedAs = ({ id, slot, kind, example }: WishedPiece): Garment =>
	imaginedPiece(
		`imagined ${id}`,
		kind ?? kindOfSlot(slot),
		example.swatches.map((swatch) => ({ ...swatch, slot })),
	);

/** Slots of which another piece makes outfits. */
const OUTFIT_SLOTS: readonly Slot[] = SLOTS.filter((slot) => slot !== 'legwear' && slot !== 'accessory');

/** A piece that is tried: one for every slot that makes outfits and every palette colour that vouches. */
export type TriedPiece = { readonly slot: Slot; readonly colour: PaletteColour; readonly garment: Garment };

export const piecesToTry = (palette: Palette): TriedPiece[] =>
	OUTFIT_SLOTS.flatMap((slot) =>
		vouchingColours(palette).map((colour) => ({ slot, colour, garment: imagined(slot, colour) })),
	);

/**
 * What the tried pieces would add, best first within a slot; those that photos cannot tell apart by the palette's weights. The tallies begin with theirs.
 */
export function missingPiecesOf(tried: readonly TriedPiece[], { added, most }: OutfitTallies): MissingPiece[] {
	return tried
		.map(({ slot, colour }, index) => {
			const best = most[index]!;
			const tally = added[index]!;
			const piece: MissingPiece = {
				slot,
				paletteColourId: colour.id,
				outfitsAdded: rangeOf(tally),
				shareOfBest: best > 0 ? Math.min(1, tally[0] / best) : 0,
			};
			return { piece, weight: colour.weight };
		})
		.sort(
			(a, b) =>
				SLOTS.indexOf(a.piece.slot) - SLOTS.indexOf(b.piece.slot) ||
				b.piece.outfitsAdded.from - a.piece.outfitsAdded.from ||
				b.weight - a.weight ||
				(a.piece.paletteColourId < b.piece.paletteColourId ? -1 : 1),
		)
		.map(({ piece }) => piece);
}
