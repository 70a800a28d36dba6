import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import { derivePalette } from '../../wardrobe/palette/palette.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { loadPaletteReadings } from '../load-season.ts';
import { noteGaps } from '../note-gaps.ts';
import type { Services } from '../services.ts';
import { type PaletteAnswer, paletteAnswer, paletteAsSeen } from './palette-answer.ts';

/** Derives the season's palette anew, keeping what the person locked or took out. */
export async function deriveSeasonPalette(
	services: Services,
	asked: Asked,
	seasonId: string,
	{ from, seen }: { readonly from: 'inspirations' | 'garments'; readonly seen?: number | undefined },
): Promise<PaletteAnswer> {
	const answer = await decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(seasonId);
		const readings = await loadPaletteReadings(home, season, from);
		const { baseCount, colourCount } = season;
		const before = await paletteAsSeen(home, seasonId, seen);
		const palette = derivePalette(readings, { baseCount, colourCount, seed: 1, keep: before });
		return {
			does: { palettes: [{ seasonId, palette }] },
			sentence: keptWords('decisions.derived', {
				from: keptWords(`counts.${from === 'garments' ? 'garments' : 'pictures'}`, { count: readings.length }),
			}),
			answer: (after) => paletteAnswer(after, season),
		};
	});
	await noteGaps(services);
	return answer;
}
