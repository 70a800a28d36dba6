import type { Slot } from '../words/slot.ts';
import { eachOutfit, outfitTable, type SeasonOfOutfits } from './outfits.ts';
import type { PairTable } from './pair-table.ts';
import { SUPPORT_KINDS } from './support.ts';

/** The pieces of one outfit as indices into the table, in the order body (a piece worn over the top after it), shoes, outer. */
type Outfit = readonly number[];

export type OutfitListOptions = {
	/** A piece that every outfit must wear, or null. */
	readonly anchor: number | null;
	/** Outfits wanted. */
	readonly limit: number;
	/** The season for whose days they are. */
	readonly season: SeasonOfOutfits;
};

/** What an outfit loses for each time that one of its pieces was shown before. */
const SHOWN_BEFORE = 2;

/** The mean of the support of all pairs among so many pieces. */
const meanOf = (support: number, pieces: number): number => support / Math.max(1, (pieces * (pieces - 1)) / 2);

/** How strong a pair's support is: 1 for the weakest kind. */
const strengthOf = ({ codes, garments }: PairTable, one: number, other: number): number =>
	SUPPORT_KINDS.length - codes[one * garments.length + other]!;

function supportOf(table: PairTable, pieces: Outfit): number {
	let sum = 0;
	for (let i = 0; i < pieces.length; i++)
		for (let j = i + 1; j < pieces.length; j++) sum += strengthOf(table, pieces[i]!, pieces[j]!);
	return sum;
}

/** Of each piece of the table, the strongest support that it has with a member of the slot; 0 where none goes with it. */
const strongestWith = (table: PairTable, members: readonly number[], slot: Slot): number[] => {
	const others = members.filter((member) => table.slots[member] === slot);
	return table.garments.map((_, one) =>
		others.reduce(
			(most, other) => (table.supported(one, other) ? Math.max(most, strengthOf(table, one, other)) : most),
			0,
		),
	);
};

/** The most that the mean support of an outfit which begins with given pieces can be. */
function supportCeiling(table: PairTable, members: readonly number[]): (pieces: Outfit) => number {
	const shoes = members.filter((member) => table.slots[member] === 'shoes');
	const [withShoes, withOuter] = [strongestWith(table, members, 'shoes'), strongestWith(table, members, 'outer')];
	const shoesWithOuter = Math.max(0, ...shoes.map((shoe) => withOuter[shoe]!));
	return (pieces) => {
		const sumOf = (strongest: readonly number[]) => pieces.reduce((sum, piece) => sum + strongest[piece]!, 0);
		const needsShoes = shoes.length > 0 && !pieces.some((piece) => table.slots[piece] === 'shoes');
		const support = supportOf(table, pieces) + (needsShoes ? sumOf(withShoes) : 0);
		const shod = pieces.length + (needsShoes ? 1 : 0);
		const worn = support + sumOf(withOuter) + (needsShoes ? shoesWithOuter : 0);
		return Math.max(meanOf(support, shod), meanOf(worn, shod + 1));
	};
}

/** The members that can be in an outfit with `anchor`; none where there are shoes, but none that go with it: that is no outfit without shoes. */
function around(table: PairTable, members: readonly number[], anchor: number): number[] {
	const going = members.filter(
		(one) => one === anchor || (table.together(anchor, one) && table.supported(anchor, one)),
	);
	const hasShoes = (some: readonly number[]) => some.some((one) => table.slots[one] === 'shoes');
	return hasShoes(members) && !hasShoes(going) ? [] : going;
}

/**
 * The outfits to show, best first: each next one has the strongest mean support of its pairs, less what pieces already shown cost, so that
 * twelve outfits show the whole set and not one pair of trousers twelve times. Exact; of equals the first by the order of `members`.
 */
export function outfitList(
	table: PairTable,
	members: readonly number[],
	{ anchor, limit, season }: OutfitListOptions,
): Outfit[] {
	const wanted = anchor === null ? members : around(table, members, anchor);
	const ceilingOf = supportCeiling(table, wanted);
	const outfits = outfitTable(table.garments, table.supported, season);
	const timesShown = new Map<number, number>();
	const costOf = (pieces: Outfit) =>
		SHOWN_BEFORE * pieces.reduce((sum, piece) => sum + (piece === anchor ? 0 : (timesShown.get(piece) ?? 0)), 0);
	const list: Outfit[] = [];
	const listed = new Set<string>();
	const next = (): Outfit | null => {
		let best: Outfit | null = null;
		let highest = Number.NEGATIVE_INFINITY;
		const visit = (pieces: Outfit) => {
			const score = meanOf(supportOf(table, pieces), pieces.length) - costOf(pieces);
			if (score <= highest || (anchor !== null && !pieces.includes(anchor)) || listed.has(pieces.join(' '))) return;
			best = [...pieces];
			highest = score;
		};
		const goesOn = (pieces: Outfit) => ceilingOf(pieces) - costOf(pieces) > highest;
		eachOutfit(outfits, wanted, visit, goesOn);
		return best;
	};
	while (list.length < limit) {
		const outfit = next();
		if (!outfit) break;
		for (const piece of outfit) timesShown.set(piece, (timesShown.get(piece) ?? 0) + 1);
		listed.add(outfit.join(' '));
		list.push(outfit);
	}
	return list;
}
