import { type Static, Type } from 'typebox';
import { YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { KIND_NAMES, type Kind, OFFERED_OCCASIONS } from '../../wardrobe/words/kind.ts';
import { SLOTS } from '../../wardrobe/words/slot.ts';
import { exact, isoDate, name, notes, oneOf, orNull, version } from './basics.ts';

const share = Type.Number({ minimum: 0, maximum: 1 });
const celsius = Type.Number({ minimum: -60, maximum: 60 });
const wears = Type.Integer({ minimum: 1, maximum: 365 });
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
	days: exact({
		coldDay: celsius,
		warmDay: celsius,
		washEveryDays: Type.Integer({ minimum: 1, maximum: 60 }),
		wearsPerWash: Type.Partial(
			exact(Object.fromEntries(KIND_NAMES.map((kind) => [kind, wears])) as Record<Kind, typeof wears>),
		),
		occasions: Type.Array(
			exact({ name, like: oneOf(OFFERED_OCCASIONS), daysAWeek: Type.Number({ minimum: 0, maximum: 7 }) }),
			{ maxItems: 6 },
		),
	}),
	weights: exact({ pictures: share, enough: share, palette: share, fit: share, loved: share, outfits: share }),
	baseCount: orNull(Type.Integer({ minimum: 0, maximum: 12 })),
	colourCount: orNull(Type.Integer({ minimum: 0, maximum: 24 })),
	waitingDays: Type.Integer({ minimum: 0, maximum: 3650 }),
	notes,
	feltGaps: Type.Array(Type.String({ maxLength: 500 }), { maxItems: 200 }),
	archived: Type.Boolean(),
};

export const seasonChanges = Type.Partial(exact({ ...seasonFields, version }), { additionalProperties: false });
export type SeasonChanges = Static<typeof seasonChanges>;
