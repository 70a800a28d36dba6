import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import { gapsNow } from '../../wardrobe/gaps/season-gaps.ts';
import { wishFromGap } from '../../wardrobe/wishes/wishes.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import { notFound } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { loadSeasonInput } from '../load-season.ts';
import { type Services, todayOf } from '../services.ts';

/** Makes a gap of the season a wish. */
export function wishForGap(
	services: Services,
	asked: Asked,
	seasonId: string,
	{ gapId }: { readonly gapId: string },
): Promise<Wish> {
	const id = services.newId();
	return decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(seasonId);
		const input = await loadSeasonInput({ store: home, now: services.now }, season);
		const gap = gapsNow(input).find((one) => one.id === gapId);
		if (!gap) throw notFound(say('nouns.gap'), gapId);
		const wish = wishFromGap(gap, input, { id, today: todayOf(services) });
		return {
			does: { wishes: { put: [wish] } },
			sentence: say('decisions.wishedForGap', { name: wish.name }),
			answer: async (after) => (await after.wishes.get(id))!,
		};
	});
}
