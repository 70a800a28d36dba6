import { keepList, keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { Garment } from '../../wardrobe/words/garment.ts';
import { joinedGarment } from '../../wardrobe/words/joined-garment.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { loadGarment } from '../load-garments.ts';
import type { Services } from '../services.ts';
import { garmentsAsSeen, type SeenVersions } from './change-garments.ts';

/** Makes one garment of several entries that are the same piece: the first, with the photos, notes and wears of all. */
export function joinGarments(
	services: Services,
	asked: Asked,
	{ ids, versions = {} }: { readonly ids: readonly string[]; readonly versions?: SeenVersions },
): Promise<Garment> {
	return decide(services, asked, async (home) => {
		const [first, ...rest] = await garmentsAsSeen(home, ids, versions);
		if (!first || rest.length === 0) throw new UserError('bad-request', say('refusals.joinOne'));
		const joined = { ...joinedGarment(first, rest), changedAt: services.now().toISOString() };
		const gone = rest.map(({ id }) => id);
		// The wears of all count for the one entry.
		const wears = (await home.wears())
			.filter(({ garmentId }) => gone.includes(garmentId))
			.map(({ on }) => ({ garmentId: first.id, on }));
		return {
			does: { garments: { put: [joined], remove: gone }, wears: { put: wears } },
			sentence: keptWords('decisions.joined', {
				names: keepList([first, ...rest].map(({ name }) => name.slice(0, 60))),
			}),
			answer: async (after) => (await loadGarment(after, first.id))!,
		};
	});
}
