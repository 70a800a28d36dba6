import { keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked, HomeReads } from '../../store/store.ts';
import { checkCandidate } from '../../wardrobe/wishes/candidate-check.ts';
import type { Garment } from '../../wardrobe/words/garment.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import type { CandidateDetails, Wish } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { loadGarment } from '../load-garments.ts';
import { loadSeasonInput } from '../load-season.ts';
import { type Services, todayOf } from '../services.ts';

/** The open wish that the candidate answers, or null. */
async function answeredWish(services: Services, home: HomeReads, candidate: CandidateDetails): Promise<Wish | null> {
	const season = await home.seasons.get(candidate.seasonId);
	if (!season) return null;
	const input = await loadSeasonInput({ store: home, now: services.now }, season);
	const { wishId } = checkCandidate(input.candidates.find((one) => one.id === candidate.id)!, input);
	return wishId ? home.wishes.get(wishId) : null;
}

/** Bought: the candidate becomes a garment, and the wish that it answers is answered. */
export function buyCandidate(services: Services, asked: Asked, id: string): Promise<Garment> {
	const garmentId = services.newId();
	return decide(services, asked, async (home) => {
		const candidate = await foundIn(home.candidates, 'candidate')(id);
		const { kind, kindFrom, price, name, nameFrom, photoId } = candidate;
		if (candidate.state === 'bought') throw new UserError('conflict', say('refusals.bought', { name }));
		const wish = await answeredWish(services, home, candidate);
		const told = {
			...(nameFrom ? { nameFrom } : {}),
			photoIds: [photoId],
			kind,
			kindFrom,
			price,
			boughtOn: todayOf(services),
		};
		const garment = newGarment(garmentId, name, services.now().toISOString(), told);
		return {
			does: {
				garments: { put: [garment] },
				candidates: { put: [{ ...candidate, state: 'bought' }] },
				...(wish ? { wishes: { put: [{ ...wish, state: 'answered' as const }] } } : {}),
			},
			sentence: wish
				? keptWords('decisions.boughtForWish', { name, wish: wish.name })
				: keptWords('decisions.bought', { name }),
			answer: async (after) => (await loadGarment(after, garmentId))!,
		};
	});
}
