import { type TSchema, Type } from 'typebox';
import type { Lab65 } from '../../colour/lab65.ts';

/** One of a closed list of words; the schema's type is the list's. */
export const oneOf = <T extends string>(values: readonly T[]) => Type.Unsafe<T>({ type: 'string', enum: [...values] });

/** A whole number of a closed list. */
export const oneOfNumbers = <T extends number>(values: readonly T[]) =>
	Type.Unsafe<T>({ type: 'integer', enum: [...values] });

export const orNull = <T extends TSchema>(schema: T) => Type.Union([schema, Type.Null()]);

/** An object that refuses unknown fields. */
export const exact = <T extends Record<string, TSchema>>(fields: T) =>
	Type.Object(fields, { additionalProperties: false });

/** Calendar day, ISO 8601. */
export const isoDate = Type.String({ pattern: '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$' });

/** A short text the user types. */
export const name = Type.String({ maxLength: 200 });

export const notes = Type.String({ maxLength: 20_000 });

/** CIELAB D65. */
export const lab = Type.Unsafe<Lab65>({
	type: 'array',
	items: { type: 'number', minimum: -200, maximum: 200 },
	minItems: 3,
	maxItems: 3,
});

export const price = orNull(Type.Number({ minimum: 0, maximum: 1e9 }));

/** Path parameters. */
export const byId = Type.Object({ id: Type.String({ minLength: 1, maxLength: 100 }) });

export type ById = { Params: { id: string } };
