import type { HomeReads } from '../store/store.ts';
import type { Season } from '../wardrobe/words/season.ts';
import type { Wish } from '../wardrobe/words/wish.ts';
import { foundIn } from './found-in.ts';

/** The wishes that a season looks for: its own, and those of earlier seasons that are still open and serve its part of the year. A wish lives until it is answered or dropped. */
export function wishesFor(season: Season, seasons: readonly Season[], wishes: readonly Wish[]): Wish[] {
	const startOf = new Map(seasons.map(({ id, startsOn }) => [id, startsOn]));
	const comesAlong = ({ seasonId, state, yearParts }: Wish) =>
		state === 'open' &&
		(startOf.get(seasonId) ?? '') < season.startsOn &&
		(yearParts.length === 0 || yearParts.includes(season.yearPart));
	return wishes.filter((wish) => wish.seasonId === season.id || comesAlong(wish));
}

/** The wishes of a season, those that come along from earlier ones among them. */
export async function wishesOf(home: HomeReads, seasonId: string): Promise<Wish[]> {
	const season = await foundIn(home.seasons, 'season')(seasonId);
	return wishesFor(season, await home.seasons.list(), await home.wishes.list());
}
