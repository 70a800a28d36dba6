import type { HomeReads } from '../store/store.ts';
import type { Wish } from '../wardrobe/words/wish.ts';

/** The wishes of a season. */
export async function wishesOf(home: HomeReads, seasonId: string): Promise<Wish[]> {
	return (await home.wishes.list()).filter((wish) => wish.seasonId === seasonId);
}
