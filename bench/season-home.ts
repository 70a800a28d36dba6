import { defaultSeason } from '../src/wardrobe/days/season-defaults.ts';
import { derivePalette } from '../src/wardrobe/palette/palette.ts';
import type { Garment } from '../src/wardrobe/words/garment.ts';
import type { Reading } from '../src/wardrobe/words/reading.ts';
import type { SeasonInput } from '../src/wardrobe/words/season-input.ts';

/** The season that the benches judge in. */
export const SEASON = defaultSeason({
	id: 'season',
	name: 'spring',
	startsOn: '2026-03-01',
	endsOn: '2026-05-31',
	addedAt: '2026-01-01',
});

/** A season that plans with everything on the rail, without wishes, wears or a line-up. */
export function seasonHome(garments: readonly Garment[], board: readonly Reading[]): SeasonInput {
	return {
		season: SEASON,
		palette: derivePalette(board),
		inspirations: board.map((reading, index) => ({
			inspiration: { id: `i${index}`, seasonId: SEASON.id, photoId: `p${index}`, title: '', group: '', addedAt: '' },
			reading,
		})),
		garments,
		wishes: [],
		candidates: [],
		makers: [],
		wears: [],
		pairWords: [],
		lineUp: null,
		today: '2026-03-01',
		lastYear: null,
	};
}
