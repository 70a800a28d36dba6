import type { PairTable } from '../../../../src/wardrobe/pairs/pair-table.ts';
import { SUPPORT_KINDS } from '../../../../src/wardrobe/pairs/support.ts';
import type { Slot } from '../../../../src/wardrobe/words/slot.ts';

/** The pieces of one outfit as indices into the table, in the order body, shoes, outer. */
export type Outfit = {
	readonly pieces: readonly number[] /** Sum over its pairs of how strong their support is. */;
	readonly strength: number;
};

/** Combinations looked at before the best are taken: enough for any set a person wears, and still at once. */
const LOOKED_AT = 20_000;

const strengthOf = (table: PairTable, one: number, other: number): number =>
	SUPPORT_KINDS.length - SUPPORT_KINDS.indexOf(table.kind(one, other));

/** Every outfit of supported pairs: top, bottom and shoes, or full and shoes, without and with an outer piece; without shoes where there are none. */
function* everyOutfit(table: PairTable, members: readonly number[]): Generator<readonly number[]> {
	const of = (slot: Slot) => members.filter((member) => table.slots[member] === slot);
	const [tops, bottoms, fulls, shoes, outers] = [of('top'), of('bottom'), of('full'), of('shoes'), of('outer')];
	const bodies = [
		...tops.flatMap((top) => bottoms.filter((bottom) => table.supported(top, bottom)).map((bottom) => [top, bottom])),
		...fulls.map((full) => [full]),
	];
	const withAll = (body: readonly number[], piece: number) => body.every((part) => table.supported(part, piece));
	for (const body of bodies) {
		const shod =
			shoes.length === 0 ? [body] : shoes.filter((shoe) => withAll(body, shoe)).map((shoe) => [...body, shoe]);
		for (const outfit of shod) {
			yield outfit;
			for (const outer of outers) if (withAll(outfit, outer)) yield [...outfit, outer];
		}
	}
}

/**
 * The outfits to show: best supported first, but each next one prefers pieces not yet shown, so that twelve outfits show the whole set and not
 * one pair of trousers twelve times. `anchor` = a piece that every one must wear, or null.
 */
export function outfitsToShow(
	table: PairTable,
	members: readonly number[],
	anchor: number | null,
	limit: number,
): Outfit[] {
	const found: Outfit[] = [];
	for (const pieces of everyOutfit(table, members)) {
		if (anchor !== null && !pieces.includes(anchor)) continue;
		const pairs = pieces.flatMap((one, index) => pieces.slice(index + 1).map((other) => strengthOf(table, one, other)));
		const strength = pairs.reduce((sum, pair) => sum + pair, 0) / Math.max(1, pairs.length);
		found.push({ pieces, strength });
		if (found.length >= LOOKED_AT) break;
	}
	const shownTimes = new Map<number, number>();
	const chosen: Outfit[] = [];
	while (chosen.length < limit && found.length > 0) {
		let best = 0;
		let bestScore = Number.NEGATIVE_INFINITY;
		for (const [index, { pieces, strength }] of found.entries()) {
			const repeats = pieces.reduce((sum, piece) => sum + (piece === anchor ? 0 : (shownTimes.get(piece) ?? 0)), 0);
			const score = strength - 2 * repeats;
			if (score > bestScore) {
				best = index;
				bestScore = score;
			}
		}
		const [outfit] = found.splice(best, 1);
		for (const piece of outfit!.pieces) shownTimes.set(piece, (shownTimes.get(piece) ?? 0) + 1);
		chosen.push(outfit!);
	}
	return chosen;
}
