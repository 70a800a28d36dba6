import type { Lab65 } from '../../colour/lab65.ts';
import type { OutfitRange } from '../pairs/outfit-range.ts';
import type { Kind } from '../words/kind.ts';
import type { Slot } from '../words/slot.ts';

/** What the season asks for and the wardrobe does not hold. */
export type Gap = {
	/** Stays the same while board, palette and quotas do. */
	readonly id: string;
	/** A piece that pictures wear, a palette colour of which too little is held, or a slot with too few pieces. */
	readonly kind: 'piece' | 'colour' | 'slot';
	readonly slot: Slot;
	/** Of a piece: what it is called; null for the others. */
	readonly name: string | null;
	/** The kind that the pictures wear; null where none is known. */
	readonly pieceKind: Kind | null;
	/** Its colour: the piece's own, else that of the palette; null for a slot without a palette. */
	readonly lab: Lab65 | null;
	/** CIEDE2000 from that colour to the farthest one that it stands for. */
	readonly spread: number;
	/** The palette colour that it belongs to; for a slot gap the one that would add most outfits; null where there is none. */
	readonly paletteColourId: string | null;
	/** Piece: pictures in which nothing owned answers it. Colour: the part of it that is not covered, 0..1. Slot: pieces missing. */
	readonly missing: number;
	/** The pictures that show it and that nothing owned answers, by inspiration; none for the others. */
	readonly pictures: readonly string[];
	/** Pictures that one such piece would make wearable. */
	readonly completes: number;
	/** The same as a number that reckons with the photos' errors: what the order is by. */
	readonly completesLikely: number;
	/** Pictures that show such a piece, owned or not; 0 for the others. */
	readonly shownIn: number;
	/** What the board alone gives it: share of the board's cloth, of the palette; 0 for a slot. */
	readonly weight: number;
	/** Share of the whole palette that is not covered in its colour, 0..1. */
	readonly paletteShare: number;
	/** Outfits for the season's days that one such piece would add. */
	readonly outfitsAdded: OutfitRange;
	/** Whether other pictures might not bring its colour back: such gaps come last. */
	readonly tentative: boolean;
	/** A stored garment, in season, that would fill it at no cost; null where there is none. */
	readonly storedFirst: string | null;
	readonly sentence: string;
};
