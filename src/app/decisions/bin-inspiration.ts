import { keptWords } from '../../language/kept-sentence.ts';
import type { Inspiration } from '../../wardrobe/words/season.ts';
import { KINDS, remover } from './change-one.ts';

/** Takes a picture off the board. */
export const binInspiration = remover<Inspiration>(KINDS.inspiration, ({ title }) =>
	keptWords('decisions.offBoard', { title: title || keptWords('decisions.aPicture') }),
);
