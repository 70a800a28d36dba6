import { KINDS, type Kind } from './kind.ts';

/**
 * Kinds that stand in for each other in an outfit: who looks for a plain top is served by a T-shirt, who looks for a blazer by a jacket cut alike.
 * Common practice, no source.
 */
export const KIND_FAMILIES = {
	tee: ['t-shirt', 'polo', 'top', 'long-sleeve'],
	shirt: ['shirt'],
	knit: ['jumper', 'hoodie', 'cardigan'],
	waistcoat: ['waistcoat'],
	jacket: ['blazer', 'jacket'],
	coat: ['coat', 'raincoat'],
	trousers: ['trousers', 'jeans', 'leggings'],
	shorts: ['shorts'],
	skirt: ['skirt'],
	dress: ['dress'],
	'one-piece': ['one-piece'],
	legwear: ['tights', 'socks'],
	'low shoes': ['shoes', 'flats', 'trainers'],
	boots: ['boots'],
	heels: ['heels'],
	sandals: ['sandals'],
	hat: ['hat'],
	scarf: ['scarf'],
	bag: ['bag'],
	belt: ['belt'],
	gloves: ['gloves'],
	glasses: ['glasses'],
	jewellery: ['jewellery'],
} as const satisfies Record<string, readonly Kind[]>;

/** A key of {@link KIND_FAMILIES}. */
export type KindFamily = keyof typeof KIND_FAMILIES;

const FAMILY_OF = new Map<Kind, KindFamily>(
	Object.entries(KIND_FAMILIES).flatMap(([family, kinds]) => kinds.map((kind) => [kind, family as KindFamily])),
);

/** The family a kind belongs to; every kind has exactly one (tests/wardrobe/words/kind-family.test.ts). */
export function familyOfKind(kind: Kind): KindFamily {
	const family = FAMILY_OF.get(kind);
	if (!family)
		throw new RangeError(`expected a family for each of the kinds ${Object.keys(KINDS).length}; "${kind}" has none`);
	return family;
}
