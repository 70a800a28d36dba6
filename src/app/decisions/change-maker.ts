import { keptWords } from '../../language/kept-sentence.ts';
import type { Maker } from '../../wardrobe/words/wish.ts';
import { changer, KINDS } from './change-one.ts';

/** Names a maker anew, or notes something of it. */
export const changeMaker = changer<Maker, Partial<Pick<Maker, 'name' | 'notes'>>>(KINDS.maker, {
	changed: (maker, changes) => ({ ...maker, ...changes }),
	sentence: ({ name }) => keptWords('decisions.changedMaker', { name }),
});
