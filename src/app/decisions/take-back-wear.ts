import { keepDay, keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { Wear } from '../../wardrobe/words/wear.ts';
import { decide } from '../decide.ts';
import { notFound } from '../errors.ts';
import type { Services } from '../services.ts';

/** Takes back a day on which a garment was said to be worn. */
export const takeBackWear = (services: Services, asked: Asked, wear: Wear): Promise<{ removed: true }> =>
	decide(services, asked, async (home) => {
		const worn = await home.wears({ from: wear.on, to: wear.on });
		if (!worn.some(({ garmentId }) => garmentId === wear.garmentId))
			throw notFound(say('nouns.wearOn', { day: keepDay(wear.on) }), wear.garmentId);
		return {
			does: { wears: { remove: [wear] } },
			sentence: keptWords('decisions.wearBack', { day: keepDay(wear.on) }),
			answer: async () => ({ removed: true as const }),
		};
	});
