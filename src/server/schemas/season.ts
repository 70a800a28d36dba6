import { type Static, Type } from 'typebox';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { SLOTS } from '../../wardrobe/words/slot.ts';
import { exact, isoDate, name, notes, oneOf, oneOfNumbers, orNull } from './basics.ts';

const share = Type.Number({ minimum: 0, maximum: 1 });
const count = Type.Integer({ minimum: 0, maximum: 200 });

export const quotasSchema = exact(
	Object.fromEntries(SLOTS.map((slot) => [slot, count])) as Record<(typeof SLOTS)[number], typeof count>,
);

/** What the user may set of a season. */
export const seasonFields = {
	name,
	yearPart: oneOf(YEAR_PARTS),
	startsOn: isoDate,
	endsOn: isoDate,
	targetCount: Type.Integer({ minimum: 1, maximum: 500 }),
	quotas: quotasSchema,
	warmthNeed: oneOfNumbers([0, 1, 2, 3] as const),
	weights: exact({ outfits: share, fit: share, loved: share }),
	baseCount: orNull(Type.Integer({ minimum: 0, maximum: 12 })),
	colourCount: orNull(Type.Integer({ minimum: 0, maximum: 24 })),
	waitingDays: Type.Integer({ minimum: 0, maximum: 3650 }),
	notes,
	feltGaps: Type.Array(Type.String({ maxLength: 500 }), { maxItems: 200 }),
	archived: Type.Boolean(),
};

export const seasonChanges = Type.Partial(exact(seasonFields), { additionalProperties: false });
export type SeasonChanges = Partial<Omit<Season, 'id' | 'addedAt'>> & Static<typeof seasonChanges>;
