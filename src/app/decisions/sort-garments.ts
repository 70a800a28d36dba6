import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import type { Garment, GarmentDetails } from '../../wardrobe/words/garment.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import type { Services } from '../services.ts';
import { garmentsAsSeen, namesOf, type SeenVersions } from './change-garments.ts';

/** Where a garment goes in a season's round of sorting; `decided: false` takes the decision back, so that it is asked about again. */
export type Sorted = Pick<Garment, 'id' | 'place' | 'wayOut'> & { readonly decided: boolean };

/** The garment with this season among those that it was sorted for, or without it. */
function inRound(garment: GarmentDetails, seasonId: string, decided: boolean): GarmentDetails {
	const others = (garment.sortedFor ?? []).filter((id) => id !== seasonId);
	return { ...garment, sortedFor: decided ? [...others, seasonId] : others };
}

/**
 * Gives garments their places for the season and notes that they were decided on: one decision, however many they are. Answers the versions that
 * they then have.
 */
export function sortGarments(
	services: Services,
	asked: Asked,
	seasonId: string,
	{ garments: told, versions = {} }: { readonly garments: readonly Sorted[]; readonly versions?: SeenVersions },
): Promise<{ versions: Record<string, number> }> {
	return decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(seasonId);
		const ids = told.map(({ id }) => id);
		const garments = await garmentsAsSeen(home, ids, versions);
		const changedAt = services.now().toISOString();
		const put = garments.map((garment, index) => {
			const { place, wayOut, decided } = told[index]!;
			return { ...inRound(garment, seasonId, decided), place, wayOut, changedAt };
		});
		return {
			does: { garments: { put } },
			sentence: keptWords('sort.decision', { season: season.name, names: namesOf(garments) }),
			answer: async (after) => {
				const versions: Record<string, number> = {};
				for (const id of ids) versions[id] = (await after.garments.get(id))!.version;
				return { versions };
			},
		};
	});
}

/** Begins the season's round of sorting anew: every garment is asked about again, and stays where it is. */
export function sortAgain(services: Services, asked: Asked, seasonId: string): Promise<{ changed: number }> {
	return decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(seasonId);
		const decided = (await home.garments.list()).filter(({ sortedFor = [] }) => sortedFor.includes(seasonId));
		const changedAt = services.now().toISOString();
		return {
			does: { garments: { put: decided.map((garment) => ({ ...inRound(garment, seasonId, false), changedAt })) } },
			sentence: keptWords('sort.beganAgain', { season: season.name }),
			answer: async () => ({ changed: decided.length }),
		};
	});
}
