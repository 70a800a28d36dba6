import type { Slot } from '../words/slot.ts';

/**
 * Which of a set of pieces go together, as outfits see it. An outfit is top + bottom + shoes, or full + shoes, each worn without or with one
 * of the outer pieces; every pair of its parts is supported. Where nobody owns shoes, outfits are counted without them.
 */
export type OutfitTable = {
	readonly slots: readonly Slot[];
	readonly goes: (one: number, other: number) => boolean;
};

/** The pieces of a set, by the slots that make outfits. */
export type OutfitParts = {
	readonly top: readonly number[];
	readonly bottom: readonly number[];
	readonly full: readonly number[];
	readonly shoes: readonly number[];
	readonly outer: readonly number[];
};

export function outfitParts(table: OutfitTable, members: Iterable<number>): OutfitParts {
	const all = [...members];
	const of = (slot: Slot) => all.filter((member) => table.slots[member] === slot);
	return { top: of('top'), bottom: of('bottom'), full: of('full'), shoes: of('shoes'), outer: of('outer') };
}

/** Set bits of a 32-bit word, summed in parallel: pairs of bits, then nibbles, then bytes. */
export function bitsOf(word: number): number {
	const pairs = word - ((word >>> 1) & 0x55555555);
	const nibbles = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
	return Math.imul((nibbles + (nibbles >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** One bit for each piece of `others` that goes with `piece`, 32 a word. */
export const bitsWith = ({ goes }: OutfitTable, piece: number, others: readonly number[]): Int32Array =>
	bitsWhere(others, (other) => goes(piece, other));

/** One bit for each piece of which `holds` is true, 32 a word. */
export function bitsWhere(pieces: readonly number[], holds: (piece: number) => boolean): Int32Array {
	const bits = new Int32Array((pieces.length + 31) >> 5);
	for (let at = 0; at < pieces.length; at++) if (holds(pieces[at]!)) bits[at >> 5]! |= 1 << (at & 31);
	return bits;
}

/** Calls `visit` with the place of each set bit, the lowest first. */
export function eachBit(bits: Int32Array, visit: (place: number) => void): void {
	for (let word = 0; word < bits.length; word++)
		for (let rest = bits[word]!; rest !== 0; rest &= rest - 1) visit((word << 5) + 31 - Math.clz32(rest & -rest));
}
