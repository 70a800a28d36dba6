import type { Slot } from './slot.ts';

/**
 * Which of a set of pieces go together, as outfits see it. An outfit is top + bottom + shoes, or full + shoes, each worn without or with one
 * of the outer pieces; every pair of its parts is supported. Where nobody owns shoes, outfits are counted without them.
 */
export type OutfitTable = {
	readonly slots: readonly Slot[];
	readonly goes: (one: number, other: number) => boolean;
};

/** The pieces of a set, by the slots that make outfits. */
type Parts = {
	readonly top: readonly number[];
	readonly bottom: readonly number[];
	readonly full: readonly number[];
	readonly shoes: readonly number[];
	readonly outer: readonly number[];
};

export function outfitParts(table: OutfitTable, members: Iterable<number>): Parts {
	const all = [...members];
	const of = (slot: Slot) => all.filter((member) => table.slots[member] === slot);
	return { top: of('top'), bottom: of('bottom'), full: of('full'), shoes: of('shoes'), outer: of('outer') };
}

/** No shoes in the set: one pair that goes with everything stands in. */
const ANY_SHOES = -1;

/** Outfits made of a body (top and bottom, or full), each with every shoe and outer piece that goes with all of it. */
function outfitsOverBody(
	table: OutfitTable,
	body: readonly number[],
	shoes: readonly number[],
	outer: readonly number[],
): number {
	const { goes } = table;
	const withBody = (piece: number) => body.every((part) => goes(part, piece));
	const coats = outer.filter(withBody);
	let outfits = 0;
	for (const shoe of shoes) {
		if (shoe === ANY_SHOES) outfits += 1 + coats.length;
		else if (withBody(shoe)) {
			outfits++;
			for (const coat of coats) if (goes(shoe, coat)) outfits++;
		}
	}
	return outfits;
}

function countOver(table: OutfitTable, { top, bottom, full, shoes, outer }: Parts): number {
	const pairs = shoes.length > 0 ? shoes : [ANY_SHOES];
	let outfits = 0;
	for (const one of top)
		for (const other of bottom)
			if (table.goes(one, other)) outfits += outfitsOverBody(table, [one, other], pairs, outer);
	for (const one of full) outfits += outfitsOverBody(table, [one], pairs, outer);
	return outfits;
}

/** Outfits that the members make. */
export const countOutfits = (table: OutfitTable, members: Iterable<number>): number =>
	countOver(table, outfitParts(table, members));

/** Outfits of the members (`parts`, without `piece`) and `piece` that wear `piece`: what it adds, or what leaving it out would cost. */
export function outfitsThrough(table: OutfitTable, parts: Parts, piece: number): number {
	const slot = table.slots[piece];
	if (slot !== 'top' && slot !== 'bottom' && slot !== 'full' && slot !== 'shoes' && slot !== 'outer') return 0;
	if (slot === 'full') return countOver(table, { ...parts, top: [], bottom: [], full: [piece] });
	if (slot === 'top' || slot === 'bottom') return countOver(table, { ...parts, full: [], [slot]: [piece] });
	const withPiece = { ...parts, [slot]: [piece] };
	if (slot === 'shoes') return countOver(table, withPiece);
	return countOver(table, withPiece) - countOver(table, { ...parts, outer: [] });
}

/** Pieces of each slot that make outfits. */
export type PartCounts = Readonly<Record<keyof Parts, number>>;

/** Outfits if everything went with everything: the quota ceiling. */
export function outfitCeiling({ top, bottom, full, shoes, outer }: PartCounts): number {
	return (top * bottom + full) * Math.max(1, shoes) * (1 + outer);
}
