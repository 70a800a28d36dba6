import { say } from '../language/speak.ts';
import type { HomeReads } from '../store/store.ts';
import type { Wish } from '../wardrobe/words/wish.ts';
import { notFound } from './errors.ts';

/** Refuses ids that name no garment; `passed` are not looked at (they were taken before). */
export async function refuseUnknownGarments(
	home: HomeReads,
	ids: readonly string[],
	passed: readonly string[] = [],
): Promise<void> {
	const asked = new Set(ids);
	for (const id of passed) asked.delete(id);
	if (asked.size === 0) return;
	for (const { id } of await home.garments.list()) asked.delete(id);
	const [unknown] = asked;
	if (unknown !== undefined) throw notFound(say('nouns.garment'), unknown);
}

/** Refuses a wish for a colour that is none of its season's palette; null is no colour of it. */
export async function refuseUnknownColour(
	home: HomeReads,
	{ seasonId, paletteColourId }: Pick<Wish, 'seasonId' | 'paletteColourId'>,
): Promise<void> {
	if (paletteColourId === null) return;
	const palette = await home.palette(seasonId);
	if (!palette?.colours.some(({ id }) => id === paletteColourId))
		throw notFound(say('nouns.paletteColour'), paletteColourId);
}
