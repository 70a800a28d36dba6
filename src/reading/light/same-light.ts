import { deltaE2000 } from '../../colour/delta-e.ts';
import { SAME_SURFACE } from '../../colour/same-colour.ts';
import { ONE_GO_MS } from '../../wardrobe/words/one-go.ts';
import type { Reading } from '../../wardrobe/words/reading.ts';

/** A photo as far as its light is concerned. */
export type LitPhoto = {
	readonly id: string;
	readonly reading: Pick<Reading, 'takenAt' | 'background'>;
	/** Group that the user put it in, or null: then time and background decide. */
	readonly lightGroup: string | null;
};

function sameByItself(one: LitPhoto, other: LitPhoto): boolean {
	const [a, b] = [one.reading, other.reading];
	if (!a.takenAt || !b.takenAt || !a.background || !b.background) return false;
	const apartMs = Math.abs(Date.parse(a.takenAt) - Date.parse(b.takenAt));
	return apartMs <= ONE_GO_MS && deltaE2000(a.background, b.background) <= SAME_SURFACE;
}

const sameLight = (one: LitPhoto, other: LitPhoto): boolean =>
	one.lightGroup !== null || other.lightGroup !== null ? one.lightGroup === other.lightGroup : sameByItself(one, other);

/**
 * Groups of photos taken in one light: those the user named alike, and those taken in one go (a chain of at most ten minutes from one to the
 * next) before the same background. Groups of one are left out. Ids sorted; the order of the photos changes nothing.
 */
export function sameLightGroups(photos: readonly LitPhoto[]): string[][] {
	const sorted = [...photos].sort((a, b) => (a.id < b.id ? -1 : 1));
	const groupOf = sorted.map((_, index) => index);
	const root = (index: number): number => (groupOf[index] === index ? index : root(groupOf[index]!));
	for (const [i, one] of sorted.entries()) {
		for (let j = i + 1; j < sorted.length; j++) if (sameLight(one, sorted[j]!)) groupOf[root(j)] = root(i);
	}
	const groups = new Map<number, string[]>();
	for (const [index, { id }] of sorted.entries()) groups.set(root(index), [...(groups.get(root(index)) ?? []), id]);
	return [...groups.values()].filter((ids) => ids.length > 1);
}
