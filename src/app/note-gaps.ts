import type { HomeReads } from '../store/store.ts';
import type { LineUpChoice, Season } from '../wardrobe/words/season.ts';
import { lineUpOf } from './chosen-set.ts';
import { type Deciders, tellChanged } from './decide.ts';
import type { Judge } from './judging.ts';
import { loadSeasonInput } from './load-season.ts';
import { type Services, todayOf } from './services.ts';

type Judges = Pick<Services, 'now'> & { readonly judge: Judge };

/** The gaps that the season has with that set, as they stand in the list. */
export async function gapIdsWith(
	{ now, judge }: Judges,
	home: HomeReads,
	season: Season,
	lineUp: LineUpChoice,
): Promise<readonly string[]> {
	const input = await loadSeasonInput({ store: home, now }, season);
	return judge('gapIds', { ...input, lineUp }, null);
}

const namesOf = (ids: readonly string[] = []): string => ids.join('\n');

/**
 * Notes for each season that is not over the order in which its gaps stand, so that no photo taken anew shuffles them: many are worth nearly the same. Nobody's decision, so that undo
 * passes over it. Nobody waits while it is worked out; a set that is chosen meanwhile has its own noted with it.
 */
export async function noteGaps({ store, events, now, judge }: Deciders & Judges): Promise<void> {
	const today = todayOf({ now });
	for (const season of await store.seasons.list()) {
		if (season.archived || season.endsOn < today) continue;
		const before = await lineUpOf(store, season.id);
		const gapIds = await gapIdsWith({ now, judge }, store, season, before);
		if (namesOf(gapIds) === namesOf(before.gapIds)) continue;
		const noted = await store.note(async (home) => {
			const choice = await lineUpOf(home, season.id);
			const isGone = (await home.seasons.get(season.id)) === null;
			return isGone || choice.version !== before.version ? {} : { lineUps: [{ ...choice, gapIds }] };
		});
		tellChanged(events, noted);
	}
}
