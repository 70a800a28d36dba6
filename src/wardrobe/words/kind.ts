import type { Slot } from './slot.ts';

/**
 * Every kind of garment with its slot, its usual warmth (0 none .. 3 winter) and the name shown.
 * Warmth: common practice, no source. To add a kind, add a line here: everything else follows.
 */
export const KINDS = {
	shirt: { slot: 'top', warmth: 1, label: 'shirt' },
	't-shirt': { slot: 'top', warmth: 0, label: 'T-shirt' },
	top: { slot: 'top', warmth: 0, label: 'top' },
	'long-sleeve': { slot: 'top', warmth: 1, label: 'long-sleeved top' },
	jumper: { slot: 'top', warmth: 3, label: 'jumper' },
	hoodie: { slot: 'top', warmth: 2, label: 'hoodie' },
	cardigan: { slot: 'top', warmth: 2, label: 'cardigan' },
	waistcoat: { slot: 'top', warmth: 1, label: 'waistcoat' },
	blazer: { slot: 'outer', warmth: 1, label: 'blazer' },
	jacket: { slot: 'outer', warmth: 2, label: 'jacket' },
	coat: { slot: 'outer', warmth: 3, label: 'coat' },
	raincoat: { slot: 'outer', warmth: 1, label: 'raincoat' },
	trousers: { slot: 'bottom', warmth: 1, label: 'trousers' },
	jeans: { slot: 'bottom', warmth: 1, label: 'jeans' },
	leggings: { slot: 'bottom', warmth: 1, label: 'leggings' },
	shorts: { slot: 'bottom', warmth: 0, label: 'shorts' },
	skirt: { slot: 'bottom', warmth: 1, label: 'skirt' },
	dress: { slot: 'full', warmth: 1, label: 'dress' },
	'one-piece': { slot: 'full', warmth: 1, label: 'one-piece' },
	tights: { slot: 'legwear', warmth: 1, label: 'tights' },
	socks: { slot: 'legwear', warmth: 1, label: 'socks' },
	shoes: { slot: 'shoes', warmth: 1, label: 'shoes' },
	boots: { slot: 'shoes', warmth: 2, label: 'boots' },
	heels: { slot: 'shoes', warmth: 0, label: 'heels' },
	sandals: { slot: 'shoes', warmth: 0, label: 'sandals' },
	flats: { slot: 'shoes', warmth: 0, label: 'flats' },
	trainers: { slot: 'shoes', warmth: 1, label: 'trainers' },
	hat: { slot: 'accessory', warmth: 1, label: 'hat' },
	scarf: { slot: 'accessory', warmth: 2, label: 'scarf' },
	bag: { slot: 'accessory', warmth: 0, label: 'bag' },
	belt: { slot: 'accessory', warmth: 0, label: 'belt' },
	gloves: { slot: 'accessory', warmth: 2, label: 'gloves' },
	glasses: { slot: 'accessory', warmth: 0, label: 'glasses' },
	jewellery: { slot: 'accessory', warmth: 0, label: 'jewellery' },
} as const satisfies Record<string, { slot: Slot; warmth: 0 | 1 | 2 | 3; label: string }>;

/** A key of {@link KINDS}. */
export type Kind = keyof typeof KINDS;

/** All kinds, in the order shown. */
export const KIND_NAMES = Object.keys(KINDS) as readonly Kind[];

/** The slot a kind belongs to. */
export const slotOfKind = (kind: Kind): Slot => KINDS[kind].slot;
