import type { Asked } from '../../store/store.ts';
import type { PairWord } from '../../wardrobe/words/wear.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { knownIn } from '../found-or-refused.ts';
import type { Services } from '../services.ts';

const verbOf = (word: PairWord['word'] | null): string => {
	if (word === null) return 'Took back the word on';
	return word === 'approved' ? 'Approved' : 'Refused';
};

/** What the person says of two garments together; null takes it back. */
export function sayOfPair(
	services: Services,
	asked: Asked,
	{ a, b, word }: { readonly a: string; readonly b: string; readonly word: PairWord['word'] | null },
): Promise<{ saved: true }> {
	if (a === b)
		throw new UserError('bad-request', 'Expected two different garments for a pairing; received the same one twice.');
	return decide(services, asked, async (home) => {
		const known = knownIn(home.garments, 'garment');
		const [first, second] = [await known(a), await known(b)];
		return {
			does: { pairWords: [{ a, b, word }] },
			sentence: `${verbOf(word)} ${first.name} with ${second.name}`,
			answer: async () => ({ saved: true as const }),
		};
	});
}
