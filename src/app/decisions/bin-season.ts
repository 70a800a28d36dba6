import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import { decide } from '../decide.ts';
import { demoPhotoIds, garmentsThatGoWith } from '../demo-garments.ts';
import { foundIn } from '../found-in.ts';
import { refuseStale } from '../refuse-stale.ts';
import type { Services } from '../services.ts';

/** Puts a season in the bin; a demo takes its garments along. */
export async function binSeason(
	services: Services,
	asked: Asked,
	id: string,
	seen: number | undefined,
): Promise<{ removed: true }> {
	const demo = await demoPhotoIds();
	return decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(id);
		await refuseStale(home, 'season', id, season, seen);
		const garments = await garmentsThatGoWith(home, id, demo);
		const sentence =
			garments.length > 0
				? keptWords('decisions.binnedDemo', { name: season.name, count: garments.length })
				: keptWords('decisions.binnedSeason', { name: season.name });
		return {
			does: { seasons: { remove: [id] }, garments: { remove: garments } },
			sentence,
			answer: async () => ({ removed: true as const }),
		};
	});
}
