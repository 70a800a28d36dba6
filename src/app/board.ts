import type { HomeReads } from '../store/store.ts';
import type { Inspiration } from '../wardrobe/words/season.ts';

/** The pictures of a season's board. */
export async function inspirationsOf(home: HomeReads, seasonId: string): Promise<Inspiration[]> {
	return (await home.inspirations.list()).filter((one) => one.seasonId === seasonId);
}
