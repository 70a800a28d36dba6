import { bitsOf, bitsWith, eachBit, type OutfitParts, type OutfitTable, outfitParts } from './outfit-parts.ts';

/** A piece with what goes with it, as bits; stands for as many pieces as go with exactly the same. */
type Row = { piece: number; times: number; readonly shoes: Int32Array; readonly outer: Int32Array };

/** Up to so many pairs of top and bottom, looking for alike pieces costs more than it saves. */
const FEW_BODIES = 1024;

/** The rows of `pieces`; pieces that go with exactly the same `others`, shoes and outer pieces are taken together where `join`. */
function rowsOf(
	table: OutfitTable,
	pieces: readonly number[],
	{ shoes, outer }: Pick<OutfitParts, 'shoes' | 'outer'>,
	others: readonly number[],
	join: boolean,
): Row[] {
	const rows = pieces.map(
		(piece): Row => ({ piece, times: 1, shoes: bitsWith(table, piece, shoes), outer: bitsWith(table, piece, outer) }),
	);
	if (!join) return rows;
	const alike = new Map<string, Row>();
	for (const row of rows) {
		const key = `${bitsWith(table, row.piece, others)} ${row.shoes} ${row.outer}`;
		const known = alike.get(key);
		if (known) known.times++;
		else alike.set(key, row);
	}
	return [...alike.values()];
}

/** What goes with all of a body: one bit for each row of shoes and each outer piece. */
type Bits = Pick<Row, 'shoes' | 'outer'>;

/**
 * Every body (top and bottom, or one full piece) and what goes with all of it: one AND of its parts' bits, written anew for each. Large
 * wardrobes have many pieces that go with exactly the same others (neutrals go with everything); with `join` those are looked at once, and
 * `times` says how many bodies one stands for. A full piece has no `below`.
 */
function eachBody(
	table: OutfitTable,
	{ top, bottom, full, shoes, outer }: OutfitParts,
	join: boolean,
	visit: (bits: Bits, shoes: readonly Row[], times: number, above: number, below: number | null) => void,
): void {
	const shoeRows = rowsOf(table, shoes, { shoes: [], outer }, [...top, ...bottom, ...full], join);
	const over = { shoes: shoeRows.map(({ piece }) => piece), outer };
	const bottoms = rowsOf(table, bottom, over, top, join);
	const both = {
		shoes: new Int32Array((over.shoes.length + 31) >> 5),
		outer: new Int32Array((outer.length + 31) >> 5),
	};
	for (const above of rowsOf(table, top, over, bottom, join)) {
		for (const below of bottoms) {
			if (!table.goes(above.piece, below.piece)) continue;
			for (let word = 0; word < both.shoes.length; word++) both.shoes[word] = above.shoes[word]! & below.shoes[word]!;
			for (let word = 0; word < both.outer.length; word++) both.outer[word] = above.outer[word]! & below.outer[word]!;
			visit(both, shoeRows, above.times * below.times, above.piece, below.piece);
		}
	}
	for (const whole of rowsOf(table, full, over, [], join)) visit(whole, shoeRows, whole.times, whole.piece, null);
}

/** Outfits over the body whose shoes and outer pieces are `body`. */
function outfitsOver(body: Bits, shoes: readonly Row[]): number {
	let coats = 0;
	for (let word = 0; word < body.outer.length; word++) coats += bitsOf(body.outer[word]!);
	// Nobody's shoes are known: one pair that goes with everything stands in.
	if (shoes.length === 0) return 1 + coats;
	let outfits = 0;
	eachBit(body.shoes, (place) => {
		const { outer, times } = shoes[place]!;
		let worn = 1;
		if (coats > 0) for (let at = 0; at < outer.length; at++) worn += bitsOf(outer[at]! & body.outer[at]!);
		outfits += times * worn;
	});
	return outfits;
}

function countOver(table: OutfitTable, parts: OutfitParts): number {
	const { top, bottom, full } = parts;
	if (top.length * bottom.length + full.length === 0) return 0;
	let outfits = 0;
	eachBody(table, parts, top.length * bottom.length > FEW_BODIES, (body, shoes, times) => {
		outfits += times * outfitsOver(body, shoes);
	});
	return outfits;
}

/** The pieces whose bit is set, in their order. */
const piecesOf = (bits: Int32Array, pieces: readonly number[]): number[] =>
	pieces.filter((_, place) => (bits[place >> 5]! >>> (place & 31)) & 1);

/**
 * Calls `visit` with every outfit that the members make, its pieces in the order body, shoes, outer. `goesOn` may rule out all outfits that
 * begin with some pieces: it is asked of each body, and of each body with its shoes before outer pieces are tried.
 */
export function eachOutfit(
	table: OutfitTable,
	members: Iterable<number>,
	visit: (pieces: readonly number[]) => void,
	goesOn: (pieces: readonly number[]) => boolean = () => true,
): void {
	const parts = outfitParts(table, members);
	eachBody(table, parts, false, (bits, shoes, _, above, below) => {
		const body = below === null ? [above] : [above, below];
		if (!goesOn(body)) return;
		const shod = shoes.length === 0 ? [body] : piecesOf(bits.shoes, parts.shoes).map((shoe) => [...body, shoe]);
		const coats = piecesOf(bits.outer, parts.outer);
		for (const pieces of shod) {
			visit(pieces);
			if (!goesOn(pieces)) continue;
			for (const coat of coats) if (shoes.length === 0 || table.goes(pieces.at(-1)!, coat)) visit([...pieces, coat]);
		}
	});
}

/** Outfits that the members make. */
export const countOutfits = (table: OutfitTable, members: Iterable<number>): number =>
	countOver(table, outfitParts(table, members));

/** Pieces of each slot that make outfits. */
export type PartCounts = Readonly<Record<keyof OutfitParts, number>>;

/** Outfits if everything went with everything: the quota ceiling. */
export function outfitCeiling({ top, bottom, full, shoes, outer }: PartCounts): number {
	return (top * bottom + full) * Math.max(1, shoes) * (1 + outer);
}
