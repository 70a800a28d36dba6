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

/** Set bits of every 16-bit number. */
const BITS = Uint8Array.from({ length: 1 << 16 }, (_, n) => {
	let count = 0;
	for (let rest = n; rest > 0; rest &= rest - 1) count++;
	return count;
});
const bitsOf = (word: number): number => BITS[word & 0xffff]! + BITS[word >>> 16]!;

/** One bit for each piece of `others` that goes with `piece`, 32 a word. */
function bitsWith({ goes }: OutfitTable, piece: number, others: readonly number[]): Uint32Array {
	const bits = new Uint32Array((others.length + 31) >> 5);
	for (const [at, other] of others.entries()) if (goes(piece, other)) bits[at >> 5]! |= 1 << (at & 31);
	return bits;
}

/** The pieces that go with a body piece, as bits. */
type Fits = { readonly shoes: Uint32Array; readonly outer: Uint32Array };

/**
 * Outfits over all bodies. Bits make it fast where there are thousands of bodies: the shoes and outer pieces that go with a whole body are
 * one AND of its parts' bits.
 */
function countOver(table: OutfitTable, { top, bottom, full, shoes, outer }: Parts): number {
	const noShoes = shoes.length === 0;
	const fitsOf = (piece: number): Fits => ({
		shoes: bitsWith(table, piece, shoes),
		outer: bitsWith(table, piece, outer),
	});
	const outerOfShoe = shoes.map((shoe) => bitsWith(table, shoe, outer));
	const body = { shoes: new Uint32Array((shoes.length + 31) >> 5), outer: new Uint32Array((outer.length + 31) >> 5) };
	const coatsOver = (own: Uint32Array): number => {
		let coats = 0;
		for (let word = 0; word < own.length; word++) coats += bitsOf(body.outer[word]! & own[word]!);
		return coats;
	};
	const outfitsOverBody = (): number => {
		// Nobody's shoes are known: one pair that goes with everything stands in.
		if (noShoes) return 1 + coatsOver(body.outer);
		let outfits = 0;
		for (let word = 0; word < body.shoes.length; word++) {
			for (let rest = body.shoes[word]!; rest !== 0; rest &= rest - 1) {
				const shoe = (word << 5) + (31 - Math.clz32(rest & -rest));
				outfits += 1 + coatsOver(outerOfShoe[shoe]!);
			}
		}
		return outfits;
	};
	let outfits = 0;
	const bottoms = bottom.map(fitsOf);
	for (const one of top) {
		const own = fitsOf(one);
		for (const [at, other] of bottom.entries()) {
			if (!table.goes(one, other)) continue;
			const below = bottoms[at]!;
			for (let word = 0; word < body.shoes.length; word++) body.shoes[word] = own.shoes[word]! & below.shoes[word]!;
			for (let word = 0; word < body.outer.length; word++) body.outer[word] = own.outer[word]! & below.outer[word]!;
			outfits += outfitsOverBody();
		}
	}
	for (const one of full) {
		const own = fitsOf(one);
		body.shoes.set(own.shoes);
		body.outer.set(own.outer);
		outfits += outfitsOverBody();
	}
	return outfits;
}

/** Outfits that the members make. */
export const countOutfits = (table: OutfitTable, members: Iterable<number>): number =>
	countOver(table, outfitParts(table, members));

/** Outfits of the members (`parts`, without `piece`) and `piece` that wear `piece`: what it adds, or what leaving it out would cost. */
export function outfitsThrough(table: OutfitTable, parts: Parts, piece: number): number {
	const slot = table.slots[piece];
	if (slot !== 'top' && slot !== 'bottom' && slot !== 'full' && slot !== 'shoes' && slot !== 'outer') return 0;
	// Every part of such an outfit goes with the piece, so only those are looked at.
	const going = (members: readonly number[]) => members.filter((member) => table.goes(piece, member));
	const shoes = going(parts.shoes);
	// No shoes at all means outfits without; shoes that do not go with the piece mean none.
	if (slot !== 'shoes' && parts.shoes.length > 0 && shoes.length === 0) return 0;
	const partners = {
		top: going(parts.top),
		bottom: going(parts.bottom),
		full: going(parts.full),
		shoes,
		outer: going(parts.outer),
	};
	if (slot === 'full') return countOver(table, { ...partners, top: [], bottom: [], full: [piece] });
	if (slot === 'top' || slot === 'bottom') return countOver(table, { ...partners, full: [], [slot]: [piece] });
	// Shoes and outer pieces go with all that is left, so they need not be counted through.
	return countOver(table, { ...partners, [slot]: [] });
}

/** Pieces of each slot that make outfits. */
export type PartCounts = Readonly<Record<keyof Parts, number>>;

/** Outfits if everything went with everything: the quota ceiling. */
export function outfitCeiling({ top, bottom, full, shoes, outer }: PartCounts): number {
	return (top * bottom + full) * Math.max(1, shoes) * (1 + outer);
}
