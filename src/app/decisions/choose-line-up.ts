import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import type { LineUpChoice } from '../../wardrobe/words/season.ts';
import { idsIn, lineUpOf } from '../chosen-set.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { gapIdsWith } from '../note-gaps.ts';
import { refuseStale } from '../refuse-stale.ts';
import { refuseUnknownGarments } from '../refuse-unknown.ts';
import type { Services } from '../services.ts';

/** Chooses the set for the season, or fixes what must be or never be in it. Parts that are not told stay. */
export function chooseLineUp(
	services: Services,
	asked: Asked,
	seasonId: string,
	{ version, ...changes }: Partial<Omit<LineUpChoice, 'seasonId' | 'gapIds'>>,
): Promise<LineUpChoice> {
	return decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(seasonId);
		const before = await lineUpOf(home, seasonId);
		await refuseStale(home, 'line-up', seasonId, before, version);
		const choice = { ...before, ...changes };
		await refuseUnknownGarments(home, idsIn(choice), idsIn(before));
		const gapIds = await gapIdsWith(services, home, season, choice);
		return {
			does: { lineUps: [{ ...choice, gapIds }] },
			sentence: keptWords('decisions.chose', { count: choice.garmentIds.length, season: season.name }),
			answer: (after) => lineUpOf(after, seasonId),
		};
	});
}
