import { outfitRows, outfitsThrough } from '../pairs/outfit-gain.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { type PairTable, pairTable } from '../pairs/pair-table.ts';
import type { Garment } from '../words/garment.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../words/kind.ts';
import { newGarment } from '../words/new-garment.ts';
import { type Palette, type PaletteColour, vouchingColours } from '../words/palette-colour.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { Wish } from '../words/wish.ts';

/** What one more piece of a slot in a palette colour would add. */
export type MissingPiece = {
	readonly slot: Slot;
	readonly paletteColourId: string;
	/** Supported outfits it would add, exactly. */
	readonly outfitsAdded: number;
	/** The same as a share of what a piece that goes with everything would add, 0..1; 0 where even that adds nothing. */
	readonly shareOfBest: number;
};

/** A first kind of the slot, to stand for a piece that is not there. */
const kindOfSlot = (slot: Slot): Kind => KIND_NAMES.find((kind) => slotOfKind(kind) === slot)!;

/** A plain piece of exactly these colours, known without doubt. */
function imaginedPiece(id: string, name: string, kind: Kind, colours: Garment['swatches']): Garment {
	return {
		...newGarment(id, name, '', { kind, kindFrom: 'user' }),
		swatches: colours,
		pattern: { type: 'plain', sure: 1 },
		trust: { error: 0, reasons: [], advice: null },
	};
}

const imagined = (slot: Slot, { id, lab, name, label }: PaletteColour): Garment =>
	imaginedPiece(`imagined ${slot} ${id}`, `a ${slot} in ${label || name}`, kindOfSlot(slot), [
		{ lab, share: 1, slot, name },
	]);

/** The piece a wish looks for: its target colour, or the palette's heaviest where any will do. */
export function wishedPiece(wish: Wish, palette: Palette): Garment {
	const { slot, target } = wish;
	const [heaviest] = [...palette.colours].sort((a, b) => b.weight - a.weight);
	const lab = target ?? heaviest?.lab;
	return imaginedPiece(
		`imagined ${wish.id}`,
		wish.name,
		wish.kind ?? kindOfSlot(slot),
		lab ? [{ lab, share: 1, slot, name: '' }] : [],
	);
}

/** Exact gains of pieces (not owned yet) over the held garments, in the order of `pieces`. `owned` holds at least the pairs of `held`. */
export function outfitGains(
	input: SeasonInput,
	pieces: readonly Garment[],
	held = heldGarments(input),
	owned = pairTable(held, pairContextOf(input)),
): { added: number; most: number }[] {
	if (pieces.length === 0) return [];
	const withPieces = pairTable(
		[...held, ...pieces],
		pairContextOf(input),
		pieces.map((_, index) => held.length + index),
	);
	const rowOf = new Map(owned.garments.map(({ id }, index) => [id, index]));
	const places = held.map(({ id }) => rowOf.get(id)!);
	const rows = outfitRows(
		{ slots: withPieces.slots, goes: (one, other) => owned.supported(places[one]!, places[other]!) },
		held.keys(),
	);
	// What a piece that goes with everything would add: the same for every piece of a slot.
	const most = new Map<Slot, number>();
	return pieces.map((_, index) => {
		const piece = held.length + index;
		const slot = withPieces.slots[piece]!;
		if (!most.has(slot))
			most.set(
				slot,
				outfitsThrough(rows, slot, () => true),
			);
		const added = outfitsThrough(rows, slot, (member) => withPieces.supported(piece, member));
		return { added, most: most.get(slot)! };
	});
}

/** Slots of which another piece makes outfits. */
const OUTFIT_SLOTS: readonly Slot[] = SLOTS.filter((slot) => slot !== 'legwear' && slot !== 'accessory');

/** For every slot that makes outfits and every palette colour, what such a piece would add; best first within a slot. `owned` as above. */
export function missingPieces(input: SeasonInput, held = heldGarments(input), owned?: PairTable): MissingPiece[] {
	const colours = vouchingColours(input.palette);
	const wanted = OUTFIT_SLOTS.flatMap((slot) => colours.map((colour) => ({ slot, colour })));
	const gains = outfitGains(
		input,
		wanted.map(({ slot, colour }) => imagined(slot, colour)),
		held,
		owned,
	);
	return wanted
		.map(({ slot, colour }, index) => {
			const { added, most } = gains[index]!;
			return { slot, paletteColourId: colour.id, outfitsAdded: added, shareOfBest: most > 0 ? added / most : 0 };
		})
		.sort(
			(a, b) =>
				SLOTS.indexOf(a.slot) - SLOTS.indexOf(b.slot) ||
				b.outfitsAdded - a.outfitsAdded ||
				(a.paletteColourId < b.paletteColourId ? -1 : 1),
		);
}
