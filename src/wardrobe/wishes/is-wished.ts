import type { Gap } from '../gaps/gap.ts';
import type { Wish } from '../words/wish.ts';

/** Whether a gap is wished for already: a piece that pictures ask for by its name, another gap by its slot and palette colour. */
export const isWished = (
	{ kind, name, slot, paletteColourId }: Pick<Gap, 'kind' | 'name' | 'slot' | 'paletteColourId'>,
	wishes: readonly Pick<Wish, 'name' | 'slot' | 'paletteColourId'>[],
): boolean =>
	wishes.some((wish) =>
		kind === 'piece' ? wish.name === name : wish.slot === slot && wish.paletteColourId === paletteColourId,
	);
