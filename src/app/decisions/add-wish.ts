import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { refuseUnknownColour } from '../refuse-unknown.ts';
import type { Services } from '../services.ts';

/** Puts a wish on the list. */
export function addWish(services: Services, asked: Asked, told: Omit<Wish, 'id' | 'version'>): Promise<Wish> {
	const wish = { id: services.newId(), ...told };
	return decide(services, asked, async (home) => {
		await foundIn(home.seasons, 'season')(wish.seasonId);
		await refuseUnknownColour(home, wish);
		if (wish.seenIn !== undefined) await foundIn(home.inspirations, 'inspiration')(wish.seenIn);
		return {
			does: { wishes: { put: [wish] } },
			sentence: keptWords('decisions.wished', { name: wish.name }),
			answer: async (after) => (await after.wishes.get(wish.id))!,
		};
	});
}
