import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import type { Garment } from '../../wardrobe/words/garment.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { loadGarment } from '../load-garments.ts';
import type { Services } from '../services.ts';

/** A new garment on the rail, of which nothing is told but its name and photos. */
export function addGarment(
	services: Services,
	asked: Asked,
	{ name, photoIds = [] }: { readonly name: string; readonly photoIds?: readonly string[] },
): Promise<Garment> {
	const id = services.newId();
	return decide(services, asked, async (home) => {
		for (const photoId of photoIds) await foundIn(home.photos, 'photo')(photoId);
		const garment = newGarment(id, name, services.now().toISOString(), { photoIds });
		return {
			does: { garments: { put: [garment] } },
			sentence: keptWords('decisions.addedGarment', { name }),
			answer: async (after) => (await loadGarment(after, id))!,
		};
	});
}
