import type { GarmentReport } from '../../../../src/wardrobe/season/garment-report.ts';
import { isSorted } from '../../../../src/wardrobe/season/stations.ts';
import type { Garment, Place } from '../../../../src/wardrobe/words/garment.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';

/** A garment to be decided on, with what the season says of it. */
export type SortItem = { readonly garment: Garment; readonly said: GarmentReport };

/** What the three keys do. */
export type SortWord = 'keep' | 'store' | 'let-go';

/** The place a word puts a garment in. */
export const PLACE_OF: Readonly<Record<SortWord, Place>> = { keep: 'rail', store: 'stored', 'let-go': 'leaving' };

const CLEAR_FIRST = { keep: 0, 'let-go': 1, store: 2, undecided: 3 } as const;

/**
 * The order to go through: slot by slot, so that like is compared with like; within a slot the clear cases first (keep, then let go, then
 * store), the undecided last, better fit first. Basics are not asked about.
 */
export function sortOrder(items: readonly SortItem[]): SortItem[] {
	return items
		.filter(({ garment }) => isSorted(garment))
		.sort(
			(a, b) =>
				SLOTS.indexOf(a.said.slot) - SLOTS.indexOf(b.said.slot) ||
				CLEAR_FIRST[a.said.sorting.suggestion] - CLEAR_FIRST[b.said.sorting.suggestion] ||
				b.said.fit.percent - a.said.fit.percent ||
				(a.garment.id < b.garment.id ? -1 : 1),
		);
}

/** Whether it was decided on in the season's round. */
export const isDecided = ({ garment }: SortItem, seasonId: string): boolean =>
	garment.sortedFor?.includes(seasonId) ?? false;

/** What is suggested, and of what is not decided whether its colour speaks for it or against it. */
export type SortLean = SortWord | 'rather-keep' | 'rather-not' | 'undecided';

const LEANS = ['keep', 'rather-keep', 'store', 'let-go', 'rather-not', 'undecided'] as const satisfies SortLean[];

function leanOf({ said: { sorting, fit } }: SortItem): SortLean {
	if (sorting.suggestion !== 'undecided') return sorting.suggestion;
	const colour = fit.verdict === 'unsure' ? fit.likely : fit.verdict;
	return colour === 'fits' ? 'rather-keep' : colour === 'off' ? 'rather-not' : 'undecided';
}

/** The items by what is suggested for them, what speaks for staying first; groups that nothing is in are left out. */
export function sortGroups(items: readonly SortItem[]): {
	readonly lean: SortLean;
	readonly items: readonly SortItem[];
}[] {
	return LEANS.map((lean) => ({ lean, items: items.filter((item) => leanOf(item) === lean) })).filter(
		(group) => group.items.length > 0,
	);
}
