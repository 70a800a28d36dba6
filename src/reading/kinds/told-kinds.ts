import type { Kind } from '../../wardrobe/words/kind.ts';
import { SLOTS, type Slot } from '../../wardrobe/words/slot.ts';

/** A kind that the network tells, and the slot that worn pieces of it have in a picture (a cardigan lies over a top, so it is outer there). */
export type ToldKind = { readonly kind: Kind | null; readonly slot: Slot };

/** Kinds by the slot of a worn piece, in the order of the network's scores; null = an accessory without a word of its own. */
const BY_SLOT: readonly (readonly [Slot, readonly (Kind | null)[]])[] = [
	['top', ['t-shirt', 'top', 'shirt', 'jumper']],
	['outer', ['blazer', 'jacket', 'coat', 'cardigan', 'waistcoat']],
	['bottom', ['trousers', 'jeans', 'leggings', 'shorts', 'skirt']],
	['full', ['dress', 'one-piece']],
	['legwear', ['tights', 'socks']],
	['shoes', ['boots', 'heels', 'sandals', 'flats', 'trainers']],
	['accessory', ['bag', 'hat', 'scarf', 'belt', 'glasses', 'jewellery', null]],
];

/** What the network tells, in the order of its scores. It has never seen gloves, hoodies or raincoats called so. */
export const TOLD_KINDS: readonly ToldKind[] = BY_SLOT.flatMap(([slot, kinds]) =>
	kinds.map((kind) => ({ kind, slot })),
);

/** Scores a piece: one a kind, one a slot that the piece may really be of, one for "no piece at all". */
export const SCORE_COUNT = TOLD_KINDS.length + SLOTS.length + 1;
