import type { HomeReads } from '../store/store.ts';
import type { CandidateCheck } from '../wardrobe/wishes/candidate.ts';
import type { CandidateDetails } from '../wardrobe/words/wish.ts';
import { foundIn } from './found-in.ts';
import { loadSeasonInput } from './load-season.ts';
import type { Services } from './services.ts';

/** The pieces found for sale for a season. */
export async function candidatesOf(home: HomeReads, seasonId: string): Promise<CandidateDetails[]> {
	await foundIn(home.seasons, 'season')(seasonId);
	return (await home.candidates.list()).filter((candidate) => candidate.seasonId === seasonId);
}

/** What speaks for and against a piece found for sale. */
export async function candidateCheckOf({ store, now, judge }: Services, id: string): Promise<CandidateCheck> {
	const details = await foundIn(store.candidates, 'candidate')(id);
	const season = await foundIn(store.seasons, 'season')(details.seasonId);
	return judge('candidate', await loadSeasonInput({ store, now }, season), id);
}
