import { keptWords } from '../../language/kept-sentence.ts';
import type { Wish } from '../../wardrobe/words/wish.ts';
import { KINDS, remover } from './change-one.ts';

/** Strikes a wish off the list; it lies in the bin. */
export const binWish = remover<Wish>(KINDS.wish, ({ name }) => keptWords('decisions.struckWish', { name }));
