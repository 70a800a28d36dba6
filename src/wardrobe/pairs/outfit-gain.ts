import type { Slot } from '../words/slot.ts';
import {
	bitsOf,
	bitsWhere,
	bitsWith,
	eachBit,
	type OutfitParts,
	type OutfitTable,
	outfitParts,
} from './outfit-parts.ts';

/** A top, bottom or full piece with its shoes and outer pieces as bits; stands for all `members` that go with exactly the same. */
type BodyRow = { readonly members: number[]; readonly shoes: Int32Array; readonly outer: Int32Array };

/** A set of pieces made ready for asking what one more piece would add, many times. */
export type OutfitRows = {
	readonly parts: OutfitParts;
	readonly tops: readonly BodyRow[];
	readonly bottoms: readonly BodyRow[];
	readonly fulls: readonly BodyRow[];
	/** The bottoms that go with each top. */
	readonly below: readonly (readonly number[])[];
	/** The outer pieces that go with each pair of shoes. */
	readonly shoeOuter: readonly Int32Array[];
};

function joinedRows(
	table: OutfitTable,
	pieces: readonly number[],
	{ shoes, outer }: OutfitParts,
	others: readonly number[],
): BodyRow[] {
	const rows = new Map<string, BodyRow>();
	for (const piece of pieces) {
		const row = { members: [piece], shoes: bitsWith(table, piece, shoes), outer: bitsWith(table, piece, outer) };
		const key = `${bitsWith(table, piece, others)} ${row.shoes} ${row.outer}`;
		const alike = rows.get(key);
		if (alike) alike.members.push(piece);
		else rows.set(key, row);
	}
	return [...rows.values()];
}

/** Makes the members of a table ready for {@link outfitsThrough}. */
export function outfitRows(table: OutfitTable, members: Iterable<number>): OutfitRows {
	const parts = outfitParts(table, members);
	const tops = joinedRows(table, parts.top, parts, parts.bottom);
	const bottoms = joinedRows(table, parts.bottom, parts, parts.top);
	return {
		parts,
		tops,
		bottoms,
		fulls: joinedRows(table, parts.full, parts, []),
		below: tops.map((top) =>
			bottoms.flatMap((bottom, index) => (table.goes(top.members[0]!, bottom.members[0]!) ? [index] : [])),
		),
		shoeOuter: parts.shoes.map((shoe) => bitsWith(table, shoe, parts.outer)),
	};
}

/** Bits that all three have set. */
function inAll(one: Int32Array, other: Int32Array, third: Int32Array): number {
	let bits = 0;
	for (let word = 0; word < one.length; word++) bits += bitsOf(one[word]! & other[word]! & third[word]!);
	return bits;
}

type Bits = { readonly shoes: Int32Array; readonly outer: Int32Array };

/** Outfits over a body that the new piece is part of: `body` and `piece` are what each of the two goes with. */
function outfitsOverBody({ parts, shoeOuter }: OutfitRows, body: Bits, piece: Bits): number {
	if (parts.shoes.length === 0) return 1 + inAll(body.outer, piece.outer, piece.outer);
	let outfits = 0;
	eachBit(
		body.shoes.map((word, at) => word & piece.shoes[at]!),
		(shoe) => {
			outfits += 1 + inAll(shoeOuter[shoe]!, body.outer, piece.outer);
		},
	);
	return outfits;
}

/** Sum over the bodies that go with the piece: how many there are of each, times what `count` says of its two parts. */
function overBodies(
	{ tops, bottoms, fulls, below }: OutfitRows,
	timesOf: (row: BodyRow) => number,
	count: (above: BodyRow, under: BodyRow) => number,
): number {
	const bottomTimes = bottoms.map(timesOf);
	let sum = 0;
	for (const [index, top] of tops.entries()) {
		const times = timesOf(top);
		if (times === 0) continue;
		for (const at of below[index]!)
			if (bottomTimes[at]! > 0) sum += times * bottomTimes[at]! * count(top, bottoms[at]!);
	}
	for (const full of fulls) sum += timesOf(full) * count(full, full);
	return sum;
}

/**
 * Outfits that a piece of the slot would add to the set: those that wear it. `goes` says which members it goes with. Shoes added to a set without
 * any are counted alone: outfits without shoes are no longer counted then.
 */
export function outfitsThrough(rows: OutfitRows, slot: Slot, goes: (member: number) => boolean): number {
	const { parts, tops, bottoms } = rows;
	const piece = { shoes: bitsWhere(parts.shoes, goes), outer: bitsWhere(parts.outer, goes) };
	// No shoes at all means outfits without; shoes that do not go with the piece mean none.
	if (slot !== 'shoes' && parts.shoes.length > 0 && piece.shoes.every((word) => word === 0)) return 0;
	const timesOf = ({ members }: BodyRow) => members.filter(goes).length;
	const over = (others: readonly BodyRow[]) =>
		others.reduce((sum, other) => {
			const times = timesOf(other);
			return times === 0 ? sum : sum + times * outfitsOverBody(rows, other, piece);
		}, 0);
	switch (slot) {
		case 'top':
			return over(bottoms);
		case 'bottom':
			return over(tops);
		case 'full':
			return outfitsOverBody(rows, piece, piece);
		case 'shoes':
			return overBodies(rows, timesOf, (above, under) => 1 + inAll(above.outer, under.outer, piece.outer));
		case 'outer':
			return overBodies(rows, timesOf, (above, under) =>
				parts.shoes.length === 0 ? 1 : inAll(above.shoes, under.shoes, piece.shoes),
			);
		default:
			return 0;
	}
}
