import { keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import type { Services } from '../services.ts';
import { suggestedGarment } from '../suggest-from-photos.ts';
import { bothOf, garmentWithPhoto, otherOf, type TwoGarments } from './garment-of-two.ts';

/** Gives one photo of a garment to a garment of its own. */
export function partGarment(
	services: Services,
	asked: Asked,
	id: string,
	{ photoId }: { readonly photoId: string },
): Promise<TwoGarments> {
	const otherId = services.newId();
	return decide(services, asked, async (home) => {
		const garment = await garmentWithPhoto(home, id, photoId);
		if (garment.photoIds.length < 2)
			throw new UserError('bad-request', say('refusals.partOne', { name: garment.name }));
		const at = services.now().toISOString();
		const first = { ...garment, photoIds: garment.photoIds.filter((one) => one !== photoId), changedAt: at };
		const second = await suggestedGarment(home, otherOf(garment, [photoId], { id: otherId, at }));
		return {
			does: { garments: { put: [first, second] } },
			sentence: keptWords('decisions.parted', { name: second.name, from: garment.name }),
			answer: (after) => bothOf(after, id, otherId),
		};
	});
}
