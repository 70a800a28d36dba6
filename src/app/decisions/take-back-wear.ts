import type { Asked } from '../../store/store.ts';
import type { Wear } from '../../wardrobe/words/wear.ts';
import { decide } from '../decide.ts';
import type { Services } from '../services.ts';

/** Takes back a day on which a garment was said to be worn. */
export const takeBackWear = (services: Services, asked: Asked, wear: Wear): Promise<{ removed: true }> =>
	decide(services, asked, async () => ({
		does: { wears: { remove: [wear] } },
		sentence: `Took back a wear on ${wear.on}`,
		answer: async () => ({ removed: true as const }),
	}));
