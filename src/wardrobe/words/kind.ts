import type { Slot } from './slot.ts';

/** What a day may ask of clothes: the four that are offered; a user's own occasion is like one of them. */
export const OFFERED_OCCASIONS = ['everyday', 'work', 'outdoors', 'dressed-up'] as const;
export type OfferedOccasion = (typeof OFFERED_OCCASIONS)[number];

/** What is known of a kind before anything is known of the garment. */
type KindFacts = {
	readonly slot: Slot;
	/** Usual warmth, 0 none .. 3 winter. Common practice, no source. */
	readonly warmth: 0 | 1 | 2 | 3;
	readonly label: string;
	/**
	 * Thermal insulation of one usual garment, clo (1 clo = 0.155 m2 K/W): ASHRAE 55 table 5.2.2.2B and ISO 7730 table C.2 (which ISO 9920 extends), from memory, the former
	 * compared with an open library's copy. Kinds that the tables lack take the nearest: leggings as thin trousers with tights, hoodie as sweat shirt.
	 */
	readonly clo: number;
	/** Wears before it is washed; 0 = it is not washed. Common practice, no source; the user may change it. */
	readonly wears: number;
	/** Worn over another top: alone it leaves something under it. */
	readonly over?: true;
	/** Worn over a dress or one-piece too. Common practice, no source. */
	readonly overFull?: true;
	/** Not for a season whose warm days stay under this, or whose cold days stay above this, in degrees Celsius. Common practice, no source. */
	readonly fromWarm?: number;
	readonly upToCold?: number;
	/** Occasions of {@link OFFERED_OCCASIONS} that it does not serve. Common practice, no source. */
	readonly notFor?: readonly OfferedOccasion[];
};

/** Every kind of garment. To add a kind, add a line here: everything else follows. */
export const KINDS = {
	shirt: { slot: 'top', warmth: 1, label: 'shirt', clo: 0.25, wears: 1, notFor: ['outdoors'] },
	't-shirt': { slot: 'top', warmth: 0, label: 'T-shirt', clo: 0.09, wears: 1, notFor: ['dressed-up'] },
	polo: { slot: 'top', warmth: 0, label: 'polo', clo: 0.17, wears: 1, notFor: ['outdoors', 'dressed-up'] },
	top: { slot: 'top', warmth: 0, label: 'top', clo: 0.12, wears: 1 },
	'long-sleeve': { slot: 'top', warmth: 1, label: 'long-sleeved top', clo: 0.2, wears: 1, notFor: ['dressed-up'] },
	jumper: { slot: 'top', warmth: 3, label: 'jumper', clo: 0.28, wears: 4, over: true, upToCold: 16 },
	hoodie: {
		slot: 'top',
		warmth: 2,
		label: 'hoodie',
		clo: 0.34,
		wears: 3,
		over: true,
		upToCold: 16,
		notFor: ['work', 'dressed-up'],
	},
	cardigan: {
		slot: 'top',
		warmth: 2,
		label: 'cardigan',
		clo: 0.25,
		wears: 5,
		over: true,
		overFull: true,
		notFor: ['outdoors'],
	},
	waistcoat: { slot: 'top', warmth: 1, label: 'waistcoat', clo: 0.1, wears: 6, over: true, notFor: ['outdoors'] },
	blazer: { slot: 'outer', warmth: 1, label: 'blazer', clo: 0.36, wears: 10, notFor: ['outdoors'] },
	jacket: { slot: 'outer', warmth: 2, label: 'jacket', clo: 0.35, wears: 20 },
	coat: { slot: 'outer', warmth: 3, label: 'coat', clo: 0.6, wears: 40, upToCold: 11 },
	raincoat: { slot: 'outer', warmth: 1, label: 'raincoat', clo: 0.3, wears: 30 },
	trousers: { slot: 'bottom', warmth: 1, label: 'trousers', clo: 0.24, wears: 4 },
	jeans: { slot: 'bottom', warmth: 1, label: 'jeans', clo: 0.24, wears: 5, notFor: ['dressed-up'] },
	leggings: { slot: 'bottom', warmth: 1, label: 'leggings', clo: 0.15, wears: 2, notFor: ['work', 'dressed-up'] },
	shorts: {
		slot: 'bottom',
		warmth: 0,
		label: 'shorts',
		clo: 0.08,
		wears: 2,
		fromWarm: 21,
		notFor: ['work', 'dressed-up'],
	},
	skirt: { slot: 'bottom', warmth: 1, label: 'skirt', clo: 0.18, wears: 4, notFor: ['outdoors'] },
	dress: { slot: 'full', warmth: 1, label: 'dress', clo: 0.3, wears: 2, notFor: ['outdoors'] },
	'one-piece': { slot: 'full', warmth: 1, label: 'one-piece', clo: 0.49, wears: 2 },
	tights: { slot: 'legwear', warmth: 1, label: 'tights', clo: 0.03, wears: 1, upToCold: 10 },
	socks: { slot: 'legwear', warmth: 1, label: 'socks', clo: 0.03, wears: 1 },
	shoes: { slot: 'shoes', warmth: 1, label: 'shoes', clo: 0.03, wears: 0 },
	boots: { slot: 'shoes', warmth: 2, label: 'boots', clo: 0.1, wears: 0, upToCold: 11, notFor: ['dressed-up'] },
	heels: { slot: 'shoes', warmth: 0, label: 'heels', clo: 0.02, wears: 0, notFor: ['outdoors'] },
	sandals: { slot: 'shoes', warmth: 0, label: 'sandals', clo: 0.02, wears: 0, fromWarm: 21, notFor: ['work'] },
	flats: { slot: 'shoes', warmth: 0, label: 'flats', clo: 0.02, wears: 0, notFor: ['outdoors'] },
	trainers: { slot: 'shoes', warmth: 1, label: 'trainers', clo: 0.03, wears: 0, notFor: ['dressed-up'] },
	hat: { slot: 'accessory', warmth: 1, label: 'hat', clo: 0.03, wears: 0 },
	scarf: { slot: 'accessory', warmth: 2, label: 'scarf', clo: 0.05, wears: 0, upToCold: 11 },
	bag: { slot: 'accessory', warmth: 0, label: 'bag', clo: 0, wears: 0 },
	belt: { slot: 'accessory', warmth: 0, label: 'belt', clo: 0, wears: 0 },
	gloves: { slot: 'accessory', warmth: 2, label: 'gloves', clo: 0.05, wears: 0, upToCold: 8 },
	glasses: { slot: 'accessory', warmth: 0, label: 'glasses', clo: 0, wears: 0 },
	jewellery: { slot: 'accessory', warmth: 0, label: 'jewellery', clo: 0, wears: 0 },
} as const satisfies Record<string, KindFacts>;

/** A key of {@link KINDS}. */
export type Kind = keyof typeof KINDS;

/** All kinds, in the order shown. */
export const KIND_NAMES = Object.keys(KINDS) as readonly Kind[];

/** What is known of a kind. */
export const factsOfKind = (kind: Kind): KindFacts => KINDS[kind];

/** The slot a kind belongs to. */
export const slotOfKind = (kind: Kind): Slot => KINDS[kind].slot;

/** The probability from which on the first kind is said as it is. Measured: see the kind network's model card. */
export const KIND_SURE_FROM = 0.8;
