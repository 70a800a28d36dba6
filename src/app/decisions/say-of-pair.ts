import { keptWords } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import type { PairWord } from '../../wardrobe/words/wear.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import type { Services } from '../services.ts';

/** The sentence of each word; the last where a word is taken back. */
const SENTENCES = {
	approved: 'decisions.approvedPair',
	refused: 'decisions.refusedPair',
	none: 'decisions.pairWordBack',
} as const;

/** What the person says of two garments together; null takes it back. */
export function sayOfPair(
	services: Services,
	asked: Asked,
	{ a, b, word }: { readonly a: string; readonly b: string; readonly word: PairWord['word'] | null },
): Promise<{ saved: true }> {
	if (a === b) throw new UserError('bad-request', say('refusals.pairTwice'));
	return decide(services, asked, async (home) => {
		const garment = foundIn(home.garments, 'garment');
		const [first, second] = [await garment(a), await garment(b)];
		return {
			does: { pairWords: [{ a, b, word }] },
			sentence: keptWords(SENTENCES[word ?? 'none'], { one: first.name, other: second.name }),
			answer: async () => ({ saved: true as const }),
		};
	});
}
