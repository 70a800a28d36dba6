import type { Inspiration } from '../../wardrobe/words/season.ts';
import { KINDS, remover } from './change-one.ts';

/** Takes a picture off the board. */
export const binInspiration = remover<Inspiration>(
	KINDS.inspiration,
	({ title }) => `Took ${title || 'a picture'} off the board`,
);
