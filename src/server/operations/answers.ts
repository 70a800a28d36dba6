import { type TSchema, Type } from 'typebox';
import { exact, told } from '../schemas/basics.ts';

/** All things of a kind. */
export const listOf = <T extends TSchema>(thing: T) => Type.Array(thing);

/** It went to the bin, or away. */
export const removed = told(
	exact({ removed: Type.Literal(true) }),
	'It went to the bin, or away; undo brings it back.',
);

/** So many. */
export const countOf = <Name extends string>(name: Name, description: string) =>
	told(exact({ [name]: Type.Integer({ minimum: 0 }) } as Record<Name, ReturnType<typeof Type.Integer>>), description);

/** A file, by its media type. Its bytes are no JSON. */
export const fileOf = (mediaType: string, description: string) =>
	({
		description,
		content: { [mediaType]: { schema: Type.Unsafe<unknown>({ type: 'string', contentMediaType: mediaType }) } },
	}) as const;
