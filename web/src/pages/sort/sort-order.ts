import type { GarmentReport } from '../../../../src/wardrobe/season/report.ts';
import type { SortingSuggestion } from '../../../../src/wardrobe/season/sorting.ts';
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

/** The items by what is suggested for them, the surest first; suggestions that nothing has are left out. */
export function sortGroups(items: readonly SortItem[]): {
	readonly suggestion: SortingSuggestion['suggestion'];
	readonly items: readonly SortItem[];
}[] {
	return (['keep', 'store', 'let-go', 'undecided'] as const)
		.map((suggestion) => ({
			suggestion,
			items: items.filter(({ said }) => said.sorting.suggestion === suggestion),
		}))
		.filter((group) => group.items.length > 0);
}
