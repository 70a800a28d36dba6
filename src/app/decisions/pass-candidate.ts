import { keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { CandidateDetails } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import type { Services } from '../services.ts';

/** Passes on a piece found for sale. */
export function passCandidate(services: Services, asked: Asked, id: string): Promise<CandidateDetails> {
	return decide(services, asked, async (home) => {
		const candidate = await foundIn(home.candidates, 'candidate')(id);
		if (candidate.state === 'bought') throw new UserError('conflict', say('refusals.bought', { name: candidate.name }));
		return {
			does: { candidates: { put: [{ ...candidate, state: 'passed' }] } },
			sentence: keptWords('decisions.passed', { name: candidate.name }),
			answer: async (after) => (await after.candidates.get(id))!,
		};
	});
}
