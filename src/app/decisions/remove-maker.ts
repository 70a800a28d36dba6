import { keptWords } from '../../language/kept-sentence.ts';
import type { Maker } from '../../wardrobe/words/wish.ts';
import { KINDS, remover } from './change-one.ts';

/** Removes a maker; undo brings it back. */
export const removeMaker = remover<Maker>(KINDS.maker, ({ name }) => keptWords('decisions.removedMaker', { name }));
