import type { HomeReads, Kept } from '../../store/store.ts';
import { type PaletteChange, paletteChange } from '../../wardrobe/palette/palette-change.ts';
import { EMPTY_PALETTE, type Palette } from '../../wardrobe/words/palette-colour.ts';
import { withWordsApart } from '../../wardrobe/words/palette-words.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { lastYearOf } from '../load-season.ts';
import { refuseStale } from '../refuse-stale.ts';

/** A season's palette, beside what it changes against last year's; `change` null where there is none. */
export type PaletteAnswer = { readonly palette: Palette; readonly change: PaletteChange | null };

/** The season's palette as it is; empty, of version 0, before the first. */
export async function paletteOf(home: HomeReads, seasonId: string): Promise<Kept<Palette>> {
	const palette = (await home.palette(seasonId)) ?? EMPTY_PALETTE;
	return { ...palette, version: palette.version ?? 0 };
}

/** The season's palette, if it is still as it was seen; `seen` undefined = as it is. */
export async function paletteAsSeen(home: HomeReads, seasonId: string, seen: number | undefined): Promise<Palette> {
	const palette = await paletteOf(home, seasonId);
	await refuseStale(home, 'palette', seasonId, palette, seen);
	return palette;
}

export async function paletteAnswer(home: HomeReads, season: Season): Promise<PaletteAnswer> {
	const palette = await paletteOf(home, season.id);
	const lastYear = await lastYearOf(home, season);
	return { palette: withWordsApart(palette), change: lastYear ? paletteChange(lastYear.palette, palette) : null };
}
