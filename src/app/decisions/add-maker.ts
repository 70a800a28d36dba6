import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import type { Maker } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import type { Services } from '../services.ts';

/** Adds a maker whom the person trusts. */
export function addMaker(services: Services, asked: Asked, told: Pick<Maker, 'name' | 'notes'>): Promise<Maker> {
	const maker = { id: services.newId(), ...told };
	return decide(services, asked, async () => ({
		does: { makers: { put: [maker] } },
		sentence: keptWords('decisions.addedMaker', { name: maker.name }),
		answer: async (after) => (await after.makers.get(maker.id))!,
	}));
}
