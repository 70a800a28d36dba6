import type { HomeReads, Kept } from '../store/store.ts';
import type { LineUpChoice } from '../wardrobe/words/season.ts';

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
