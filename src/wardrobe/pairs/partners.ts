import type { Garment } from '../words/garment.ts';
import type { Slot } from '../words/slot.ts';
import type { RankOptions } from './pair-rank.ts';
import { type PairTable, pairTable } from './pair-table.ts';
import type { PairContext, Support } from './support.ts';

/** A garment of a complementary slot and what speaks for wearing the two together. */
export type Partner = {
	readonly garmentId: string;
	readonly name: string;
	readonly slot: Slot;
	readonly support: Support;
	/** CIEDE2000 of the nearest of their colours, greys taken as exact greys. */
	readonly distance: number;
};

/** What speaks for wearing two garments together, the user's own word first. */
export function supportOf(a: Garment, b: Garment, context: PairContext): Support {
	const table = pairTable([a, b], context);
	return { kind: table.kind(0, 1), sentence: table.sentence(0, 1) };
}

/**
 * The garments that go with one of the table's, best first: by support, echoes before others, then by CIEDE2000. Unproven and refused pairs
 * are left out unless asked for. At most `limit`; sentences are only made for those returned.
 */
export const partnersIn = (table: PairTable, index: number, options: RankOptions = {}): Partner[] =>
	table.ranked(index, options).map((other) => {
		const { id, name } = table.garments[other]!;
		return {
			garmentId: id,
			name,
			slot: table.slots[other]!,
			support: { kind: table.kind(index, other), sentence: table.sentence(index, other) },
			distance: table.distance(index, other),
		};
	});

/** The garments among `garments` that go with `garment`, best first. For all garments at once, make one `pairTable` and ask `partnersIn`. */
export function partnersOf(
	garment: Garment,
	garments: readonly Garment[],
	context: PairContext,
	limit?: number,
): Partner[] {
	const others = garments.filter(({ id }) => id !== garment.id);
	const table = pairTable([garment, ...others], context, [0]);
	return partnersIn(table, 0, limit === undefined ? {} : { limit });
}
