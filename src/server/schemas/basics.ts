import { type Static, type TSchema, Type } from 'typebox';
import type { Lab65 } from '../../colour/lab65.ts';

/** Keyword of ours: the validator takes the blanks around the text away. */
export const TRIMMED = 'x-trimmed';

/** One of a closed list of words; the schema's type is the list's. */
export const oneOf = <T extends string>(values: readonly T[]) => Type.Unsafe<T>({ type: 'string', enum: [...values] });

/** A whole number of a closed list. */
export const oneOfNumbers = <T extends number>(values: readonly T[]) =>
	Type.Unsafe<T>({ type: 'integer', enum: [...values] });

export const orNull = <T extends TSchema>(schema: T) => Type.Union([schema, Type.Null()]);

/** An object that refuses unknown fields. */
export const exact = <T extends Record<string, TSchema>>(fields: T, about: { readonly title?: string } = {}) =>
	Type.Object(fields, { additionalProperties: false, ...about });

/** The schema with a comment in plain words. */
export const told = <T extends TSchema>(schema: T, description: string): T => ({ ...schema, description });

/** An object with any fields, all of one kind. */
export const mapOf = <T extends TSchema>(value: T) =>
	Type.Unsafe<Record<string, Static<T>>>({ type: 'object', additionalProperties: value });

/** A day of the calendar, ISO 8601: the validator looks whether it exists. */
export const isoDate = Type.String({ format: 'date' });

/** A name the user types: not empty, and without blanks around it once it has passed the validator. */
export const name = Type.String({ maxLength: 200, pattern: '\\S', [TRIMMED]: true });

/** A short text that may be empty. */
export const shortText = Type.String({ maxLength: 200 });

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

/** The version of an entry that the client saw; a change to a newer one is refused. */
export const version = Type.Integer({ minimum: 0 });

/** The same in an address. */
export const seen = Type.Object({ version: Type.Optional(version) });

export type Seen = { Querystring: { version?: number } };
