import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked, HomeReads, Kept } from '../../store/store.ts';
import { gapsNow } from '../../wardrobe/gaps/season-gaps.ts';
import type { LineUpChoice, Season } from '../../wardrobe/words/season.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { loadSeasonInput } from '../load-season.ts';
import { refuseStale } from '../refuse-stale.ts';
import { refuseUnknownGarments } from '../refuse-unknown.ts';
import type { Services } from '../services.ts';

/** The season's chosen set; empty, of version 0, before the first choice. */
export const lineUpOf = async (home: HomeReads, seasonId: string): Promise<Kept<LineUpChoice>> => {
	const choice = await home.lineUp(seasonId);
	return { seasonId, garmentIds: [], mustKeep: [], neverUse: [], ...choice, version: choice?.version ?? 0 };
};

/** Ids of the garments that a choice names. */
export const idsIn = ({
	garmentIds = [],
	mustKeep = [],
	neverUse = [],
}: Partial<Pick<LineUpChoice, 'garmentIds' | 'mustKeep' | 'neverUse'>>): string[] => [
	...garmentIds,
	...mustKeep,
	...neverUse,
];

/** The gaps that the season has with that set, as they stand in the list. */
async function gapsWith({ now }: Services, home: HomeReads, season: Season, lineUp: LineUpChoice): Promise<string[]> {
	const input = await loadSeasonInput({ store: home, now }, season);
	return gapsNow({ ...input, lineUp }).map(({ id }) => id);
}

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
		const gapIds = choice.garmentIds.length > 0 ? await gapsWith(services, home, season, choice) : [];
		return {
			does: { lineUps: [{ ...choice, gapIds }] },
			sentence: keptWords('decisions.chose', { count: choice.garmentIds.length, season: season.name }),
			answer: (after) => lineUpOf(after, seasonId),
		};
	});
}
