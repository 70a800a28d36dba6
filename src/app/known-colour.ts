import { say } from '../language/speak.ts';
import type { HomeReads } from '../store/store.ts';
import type { Wish } from '../wardrobe/words/wish.ts';
import { notFound } from './errors.ts';

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
