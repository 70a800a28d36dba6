import type { HomeReads } from '../store/store.ts';
import { type PaletteAnswer, paletteAnswer } from './decisions/palette-answer.ts';
import { foundIn } from './found-in.ts';

/** The season's palette, beside last year's. */
export const seasonPalette = async (home: HomeReads, seasonId: string): Promise<PaletteAnswer> =>
	paletteAnswer(home, await foundIn(home.seasons, 'season')(seasonId));
