import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import { ownFullShare } from '../../wardrobe/days/full-share.ts';
import { defaultSeason } from '../../wardrobe/days/season-defaults.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { decide } from '../decide.ts';
import type { Services } from '../services.ts';
import { refuseWrongDates, type SeasonDates } from './season-dates.ts';

/** A new season with the usual numbers; dresses by what is owned. */
export function startSeason(
	services: Services,
	asked: Asked,
	told: SeasonDates & Partial<Pick<Season, 'yearPart'>>,
): Promise<Season> {
	refuseWrongDates(told);
	const given = { id: services.newId(), addedAt: services.now().toISOString(), ...told };
	return decide(services, asked, async (home) => {
		const season = defaultSeason(given, ownFullShare(await home.garments.list()));
		return {
			does: { seasons: { put: [season] } },
			sentence: keptWords('decisions.started', { name: season.name }),
			answer: async (after) => (await after.seasons.get(season.id))!,
		};
	});
}
