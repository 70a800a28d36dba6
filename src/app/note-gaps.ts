import type { Decided, HomeReads } from '../store/store.ts';
import { gapsNow } from '../wardrobe/gaps/season-gaps.ts';
import type { LineUpChoice, Season } from '../wardrobe/words/season.ts';
import { lineUpOf } from './chosen-set.ts';
import { type Deciders, tellChanged } from './decide.ts';
import { loadSeasonInput } from './load-season.ts';
import { type Services, todayOf } from './services.ts';

type Clock = Pick<Services, 'now'>;

/** The gaps that the season has with that set, as they stand in the list. */
export async function gapIdsWith(
	{ now }: Clock,
	home: HomeReads,
	season: Season,
	lineUp: LineUpChoice,
): Promise<readonly string[]> {
	const input = await loadSeasonInput({ store: home, now }, season);
	return gapsNow({ ...input, lineUp }).map(({ id }) => id);
}

/** The choices of the seasons that are not over, each with its gaps where these stand otherwise than noted. */
async function gapsToNote(clock: Clock, home: HomeReads): Promise<Decided> {
	const today = todayOf(clock);
	const lineUps: LineUpChoice[] = [];
	for (const season of await home.seasons.list()) {
		if (season.archived || season.endsOn < today) continue;
		const choice = await lineUpOf(home, season.id);
		const gapIds = await gapIdsWith(clock, home, season, choice);
		if (gapIds.join('\n') !== (choice.gapIds ?? []).join('\n')) lineUps.push({ ...choice, gapIds });
	}
	return { lineUps };
}

/**
 * Notes for each season that is not over the order in which its gaps stand, so that no photo taken anew shuffles them: many are worth nearly the same. Nobody's decision, so that undo
 * passes over it.
 */
export async function noteGaps({ store, events, now }: Deciders & Clock): Promise<void> {
	tellChanged(events, await store.note((home) => gapsToNote({ now }, home)));
}
