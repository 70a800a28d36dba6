import type { HomeReads } from '../store/store.ts';
import type { Inspiration } from '../wardrobe/words/season.ts';
import { knownIn } from './found-or-refused.ts';

/** The pictures of a season's board. */
export async function inspirationsOf(home: HomeReads, seasonId: string): Promise<Inspiration[]> {
	await knownIn(home.seasons, 'season')(seasonId);
	return (await home.inspirations.list()).filter((one) => one.seasonId === seasonId);
}
