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
		if (known.state === 'bought')
			throw new UserError(
				'conflict',
				`Expected a candidate that is not bought yet; "${known.name}" is a garment already.`,
			);
		return {
			does: { candidates: { put: [{ ...known, state: 'passed' }] } },
			sentence: `Passed on ${known.name}`,
			answer: async (after) => (await after.candidates.get(id))!,
		};
	});
}
