import { keptWords } from '../../language/kept-sentence.ts';
import { inLanguage, say } from '../../language/speak.ts';
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
		// The name is kept by its parts, so that it reads in every language.
		const wish = inLanguage('kept', () => {
			const gap = gapsNow(input).find((one) => one.id === gapId);
			return gap ? wishFromGap(gap, input, { id, today: todayOf(services) }) : null;
		});
		if (!wish) throw notFound(say('nouns.gap'), gapId);
		return {
			does: { wishes: { put: [wish] } },
			sentence: keptWords('decisions.wishedForGap', { name: wish.name }),
			answer: async (after) => (await after.wishes.get(id))!,
		};
	});
}
