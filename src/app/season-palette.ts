import type { HomeReads } from '../store/store.ts';
import { type PaletteAnswer, paletteAnswer } from './decisions/palette-answer.ts';
import { knownIn } from './found-or-refused.ts';

/** The season's palette, beside last year's. */
export const seasonPalette = async (home: HomeReads, seasonId: string): Promise<PaletteAnswer> =>
	paletteAnswer(home, await knownIn(home.seasons, 'season')(seasonId));
