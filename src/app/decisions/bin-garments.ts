import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import { decide } from '../decide.ts';
import type { Services } from '../services.ts';
import { garmentsAsSeen, namesOf, type SeenVersions } from './change-garments.ts';

/** Puts garments in the bin, where they stay 90 days. */
export function binGarments(
	services: Services,
	asked: Asked,
	{ ids, versions = {} }: { readonly ids: readonly string[]; readonly versions?: SeenVersions },
): Promise<{ removed: number }> {
	return decide(services, asked, async (home) => {
		const garments = await garmentsAsSeen(home, ids, versions);
		return {
			does: { garments: { remove: ids } },
			sentence: keptWords('decisions.binned', { names: namesOf(garments) }),
			answer: async () => ({ removed: garments.length }),
		};
	});
}
