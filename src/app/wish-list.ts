import type { HomeReads } from '../store/store.ts';
import type { Wish } from '../wardrobe/words/wish.ts';
import { knownIn } from './found-or-refused.ts';

/** The wishes of a season. */
export async function wishesOf(home: HomeReads, seasonId: string): Promise<Wish[]> {
	await knownIn(home.seasons, 'season')(seasonId);
	return (await home.wishes.list()).filter((wish) => wish.seasonId === seasonId);
}
