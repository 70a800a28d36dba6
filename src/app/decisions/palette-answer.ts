import type { HomeReads } from '../../store/store.ts';
import { type PaletteChange, paletteChange } from '../../wardrobe/palette/palette-change.ts';
import { EMPTY_PALETTE, type Palette } from '../../wardrobe/words/palette-colour.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { lastYearOf } from '../load-season.ts';

/** A season's palette, beside what it changes against last year's; `change` null where there is none. */
export type PaletteAnswer = { readonly palette: Palette; readonly change: PaletteChange | null };

/** The season's palette as it is, empty before the first. */
export const paletteOf = async (home: HomeReads, seasonId: string): Promise<Palette> =>
	(await home.palette(seasonId)) ?? EMPTY_PALETTE;

export async function paletteAnswer(home: HomeReads, season: Season): Promise<PaletteAnswer> {
	const palette = await paletteOf(home, season.id);
	const lastYear = await lastYearOf(home, season);
	return { palette, change: lastYear ? paletteChange(lastYear.palette, palette) : null };
}
