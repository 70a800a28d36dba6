import type { SeasonInput } from '../words/season-input.ts';
import { toldReading } from '../words/told-reading.ts';
import { pairingsFromReadings } from './pairings.ts';
import type { PairContext } from './support.ts';
import { wornTogether } from './worn-together.ts';

/** What pairs of garments are judged by in this season. */
export const pairContextOf = (input: SeasonInput): PairContext => ({
	palette: input.palette,
	pairings: pairingsFromReadings(
		input.inspirations.map(({ reading, inspiration }) => toldReading(reading, inspiration.pieceKinds)),
	),
	pairWords: input.pairWords,
	wornTogether: wornTogether(input.wears),
});
