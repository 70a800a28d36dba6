import { say } from '../../language/speak.ts';
import type { Inspiration } from '../../wardrobe/words/season.ts';
import { KINDS, remover } from './change-one.ts';

/** Takes a picture off the board. */
export const binInspiration = remover<Inspiration>(KINDS.inspiration, ({ title }) =>
	say('decisions.offBoard', { title: title || say('decisions.aPicture') }),
);
