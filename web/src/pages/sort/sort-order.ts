import type { GarmentReport } from '../../../../src/wardrobe/season/report.ts';
import type { Garment, Place } from '../../../../src/wardrobe/words/garment.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';

/** A garment to be decided on, with what the season says of it. */
export type SortItem = { readonly garment: Garment; readonly said: GarmentReport };

/** What the three keys do. */
export type SortWord = 'keep' | 'store' | 'let-go';

/** The place a word puts a garment in. */
export const PLACE_OF: Readonly<Record<SortWord, Place>> = { keep: 'rail', store: 'stored', 'let-go': 'leaving' };

/**
 * The order to go through: slot by slot, so that like is compared with like; within a slot the clear cases first (keep, then let go, then
 * store), the undecided last, better fit first. Basics are not asked about.
 */
export function sortOrder(items: readonly SortItem[]): SortItem[] {
	const clear = { keep: 0, 'let-go': 1, store: 2, undecided: 3 };
	return items
		.filter(({ garment }) => !garment.basic && garment.place !== 'gone')
		.sort(
			(a, b) =>
				SLOTS.indexOf(a.said.slot) - SLOTS.indexOf(b.said.slot) ||
				clear[a.said.sorting.suggestion] - clear[b.said.sorting.suggestion] ||
				b.said.fit.percent - a.said.fit.percent ||
				(a.garment.id < b.garment.id ? -1 : 1),
		);
}

/** Ids decided on in this round, kept on the device so that a reload goes on where it was; unreadable text is an empty round. */
export function roundFromText(text: string | null): readonly string[] {
	if (!text) return [];
	try {
		const parsed: unknown = JSON.parse(text);
		return Array.isArray(parsed) ? parsed.filter((id): id is string => typeof id === 'string') : [];
	} catch {
		return [];
	}
}
