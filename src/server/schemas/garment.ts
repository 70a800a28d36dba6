import { type Static, Type } from 'typebox';
import { CONDITIONS, PLACES, WAYS_OUT, YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../wardrobe/words/kind.ts';
import { PATTERN_TYPES } from '../../wardrobe/words/reading.ts';
import { exact, isoDate, name, notes, oneOf, oneOfNumbers, orNull, price, version } from './basics.ts';

/** A photo's id: the SHA-256 of its bytes. */
export const photoId = Type.String({ pattern: '^[0-9a-f]{64}$' });

/** Garments that one request is about: each named once. */
export const garmentIds = Type.Array(Type.String({ maxLength: 100 }), {
	minItems: 1,
	maxItems: 2000,
	uniqueItems: true,
});

/** What the user may set of a garment. */
export const garmentFields = {
	name,
	nameFrom: oneOf(['user', 'looks'] as const),
	kind: oneOf(KIND_NAMES),
	kindFrom: oneOf(['user', 'photo', 'none'] as const),
	photoIds: Type.Array(photoId, { maxItems: 20 }),
	place: oneOf(PLACES),
	price,
	boughtOn: orNull(isoDate),
	yearParts: Type.Array(oneOf(YEAR_PARTS), { maxItems: 4 }),
	basic: Type.Boolean(),
	loved: orNull(oneOfNumbers([0, 1, 2, 3] as const)),
	warmth: orNull(oneOfNumbers([0, 1, 2, 3] as const)),
	occasions: Type.Array(name, { maxItems: 12 }),
	condition: oneOf(CONDITIONS),
	wayOut: orNull(oneOf(WAYS_OUT)),
	patternByUser: orNull(oneOf(PATTERN_TYPES)),
	notes,
	care: notes,
};

/** Garments with the places that a round of sorting gives them. */
export const sortedGarments = Type.Array(
	exact({
		id: Type.String({ maxLength: 100 }),
		place: oneOf(PLACES),
		wayOut: orNull(oneOf(WAYS_OUT)),
		decided: Type.Boolean(),
	}),
	{ minItems: 1, maxItems: 2000 },
);

/** Versions that the client saw, by garment. */
export const versionsById = Type.Record(Type.String({ maxLength: 100 }), version, { maxProperties: 2000 });

export const garmentChanges = Type.Partial(exact({ ...garmentFields, version }), { additionalProperties: false });
export type GarmentChanges = Static<typeof garmentChanges>;
