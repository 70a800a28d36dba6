import { keepDay, keptWords } from '../../language/kept-sentence.ts';
import { dayText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { Wear } from '../../wardrobe/words/wear.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { type Services, todayOf } from '../services.ts';

/** Notes days on which garments were worn; `wears` holds one or more. */
export function noteWears(
	services: Services,
	asked: Asked,
	{ wears }: { readonly wears: readonly Wear[] },
): Promise<{ added: number }> {
	const today = todayOf(services);
	const tooLate = wears.find(({ on }) => on > today);
	if (tooLate)
		throw new UserError('bad-request', say('refusals.wearLater', { today: dayText(today), day: dayText(tooLate.on) }));
	return decide(services, asked, async (home) => {
		const names = new Map<string, string>();
		for (const id of new Set(wears.map(({ garmentId }) => garmentId)))
			names.set(id, (await foundIn(home.garments, 'garment')(id)).name);
		const [first] = wears;
		return {
			does: { wears: { put: wears } },
			sentence:
				wears.length === 1 && first
					? keptWords('decisions.wore', { name: names.get(first.garmentId)!, day: keepDay(first.on) })
					: keptWords('decisions.notedWears', { count: wears.length }),
			answer: async () => ({ added: wears.length }),
		};
	});
}
