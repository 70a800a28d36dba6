import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { CandidateDetails } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { knownIn } from '../found-or-refused.ts';
import type { Services } from '../services.ts';

/** Passes on a piece found for sale. */
export function passCandidate(services: Services, asked: Asked, id: string): Promise<CandidateDetails> {
	return decide(services, asked, async (home) => {
		const known = await knownIn(home.candidates, 'candidate')(id);
		if (known.state === 'bought') throw new UserError('conflict', say('refusals.bought', { name: known.name }));
		return {
			does: { candidates: { put: [{ ...known, state: 'passed' }] } },
			sentence: say('decisions.passed', { name: known.name }),
			answer: async (after) => (await after.candidates.get(id))!,
		};
	});
}
