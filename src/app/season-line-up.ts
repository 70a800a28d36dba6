import type { HomeReads } from '../store/store.ts';
import type { LineUpResult } from '../wardrobe/line-up/line-up.ts';
import type { LineUpRequest } from '../wardrobe/line-up/line-up-choices.ts';
import type { swapsFor } from '../wardrobe/line-up/swaps.ts';
import type { WhatIf, whatIf } from '../wardrobe/line-up/what-if.ts';
import type { LineUpChoice, Season } from '../wardrobe/words/season.ts';
import { idsIn, lineUpOf } from './chosen-set.ts';
import { foundIn } from './found-in.ts';
import { loadSeasonInput } from './load-season.ts';
import { refuseUnknownGarments } from './refuse-unknown.ts';
import type { Services } from './services.ts';

/** What a set is built for; quotas and number come from the season where they are not told. */
export type BuildRequest = Pick<LineUpRequest, 'mustKeep' | 'neverUse'> &
	Partial<LineUpRequest> & {
		readonly prove?: boolean;
		/** With `prove`: the set to prove, as it stands. */
		readonly garmentIds?: readonly string[];
	};

/** The season's chosen set. */
export async function chosenLineUp(home: HomeReads, seasonId: string): Promise<LineUpChoice> {
	await foundIn(home.seasons, 'season')(seasonId);
	return lineUpOf(home, seasonId);
}

/** The season, where these ids name garments; one that was chosen may be in the bin since. */
async function seasonFor({ store }: Services, seasonId: string, garmentIds: readonly string[]): Promise<Season> {
	const season = await foundIn(store.seasons, 'season')(seasonId);
	await refuseUnknownGarments(store, garmentIds, idsIn(await lineUpOf(store, seasonId)));
	return season;
}

/** The best set found for the season, proven where asked until `signal` stops it; nothing is chosen by it. */
export async function builtLineUp(
	services: Services,
	seasonId: string,
	{ prove, garmentIds = [], ...wanted }: BuildRequest,
	signal: AbortSignal,
): Promise<LineUpResult> {
	const season = await seasonFor(services, seasonId, [...garmentIds, ...idsIn(wanted)]);
	const input = await loadSeasonInput(services, season);
	const request: LineUpRequest = { quotas: season.quotas, targetCount: season.targetCount, ...wanted };
	const { judge } = services;
	return prove ? judge('proof', input, { request, garmentIds }, signal) : judge('lineUp', input, request, signal);
}

/** What would become of a set with some garments less and some more. */
export async function lineUpIf(
	services: Services,
	seasonId: string,
	change: Parameters<typeof whatIf>[1],
): Promise<WhatIf> {
	const season = await seasonFor(services, seasonId, [...change.garmentIds, ...change.remove, ...change.add]);
	return services.judge('whatIf', await loadSeasonInput(services, season), change);
}

/** What the set would be with each garment that could stand in for one of it. */
export async function swapsInLineUp(services: Services, seasonId: string, asked: Parameters<typeof swapsFor>[1]) {
	const season = await seasonFor(services, seasonId, [...asked.garmentIds, asked.garmentId]);
	return services.judge('swaps', await loadSeasonInput(services, season), asked);
}
