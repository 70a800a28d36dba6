import { type Static, Type } from 'typebox';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../wardrobe/words/kind.ts';
import { SLOTS } from '../../wardrobe/words/slot.ts';
import { exact, isoDate, lab, name, notes, oneOf, orNull, price, version } from './basics.ts';

/** What the user may set of a wish. */
export const wishFields = {
	seasonId: Type.String({ maxLength: 100 }),
	name,
	slot: oneOf(SLOTS),
	kind: orNull(oneOf(KIND_NAMES)),
	target: orNull(lab),
	tolerance: Type.Number({ minimum: 1, maximum: 40 }),
	yearParts: Type.Array(oneOf(YEAR_PARTS), { maxItems: 4 }),
	priceLimit: price,
	expectedWearsPerYear: orNull(Type.Number({ minimum: 0, maximum: 366 })),
	wantedSince: isoDate,
	state: oneOf(['open', 'answered', 'dropped'] as const),
	paletteColourId: orNull(Type.String({ maxLength: 100 })),
	seenIn: Type.Optional(Type.String({ maxLength: 100 })),
	notes,
};
/** What may change of it: the picture that it was made from stays. */
const { seenIn: _stays, ...changing } = wishFields;
export const wishChanges = Type.Partial(exact({ ...changing, version }), { additionalProperties: false });
export type WishChanges = Static<typeof wishChanges>;

/** What the user may set of a candidate. */
export const candidateFields = {
	name,
	kind: oneOf(KIND_NAMES),
	price,
	used: Type.Boolean(),
	source: Type.String({ maxLength: 2000 }),
	state: oneOf(['open', 'bought', 'passed'] as const),
};
export const candidateChanges = Type.Partial(exact({ ...candidateFields, version }), { additionalProperties: false });
export type CandidateChanges = Static<typeof candidateChanges>;

export const makerFields = exact({ name, notes });
export const makerChanges = Type.Partial(exact({ name, notes, version }), { additionalProperties: false });
