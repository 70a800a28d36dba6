import type { Lab65 } from '../../../src/colour/lab65.ts';
import type { Picture } from '../../../src/wardrobe/pictures/picture.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import { slotOfKind } from '../../../src/wardrobe/words/kind.ts';
import type { Pattern, Piece } from '../../../src/wardrobe/words/reading.ts';

export const PLAIN: Pattern = { type: 'plain', sure: 1 };
const TRUST = { error: 6, reasons: [], advice: null };

/** A piece of one colour whose kind is sure. */
export const piece = (kind: Kind, lab: Lab65, more: Partial<Piece> = {}): Piece => ({
	slot: slotOfKind(kind),
	kind,
	kinds: [{ kind, probability: 1 }],
	share: 0.1,
	pattern: PLAIN,
	swatches: [{ lab, share: 1, name: 'a colour' }],
	...more,
});

const seen = (one: Piece, place: number) => ({ ...one, place, told: false });

/** A picture of these pieces. */
export const picture = (inspirationId: string, pieces: readonly Piece[]): Picture => ({
	inspirationId,
	title: inspirationId,
	pieces: pieces.map(seen).filter(({ slot }) => slot !== 'accessory'),
	accessories: pieces.map(seen).filter(({ slot }) => slot === 'accessory'),
	trust: TRUST,
});
