import { Type } from 'typebox';
import { ERRORS, type ErrorCode } from '../../app/errors.ts';
import { staleEntry } from '../schemas/answers.ts';
import { exact, oneOf, told } from '../schemas/basics.ts';

const codes = [...(Object.keys(ERRORS) as ErrorCode[]), 'internal'] as const;

/** What is answered instead of what was asked for. */
export const refusal = exact(
	{
		error: exact({
			code: oneOf(codes),
			message: told(Type.String(), 'A sentence for the person: what was expected, for what, what came.'),
			field: Type.Optional(
				told(Type.String(), 'Of a field that is not as it should be: its place in the request, as a JSON Pointer.'),
			),
			changed: Type.Optional(told(Type.Array(staleEntry), 'Of code "stale": what was changed meanwhile.')),
		}),
	},
	{ title: 'Refusal' },
);

const because = (description: string) => told(refusal, description);

/** What every operation may answer. */
const ALWAYS = {
	400: because('Something in the request is not as it should be.'),
	401: because('The device is not paired.'),
	403: because('The request comes from a foreign page or for a foreign name.'),
	500: because('The program failed. Nothing stored was lost.'),
} as const;

const MISSING = { 404: because('The address or an id in the request names nothing.') } as const;

/** What an operation that decides something may answer too. */
const DECIDING = {
	...MISSING,
	409: because('It cannot be done as things are now, or something else was changed meanwhile.'),
	413: because('The request is larger than it may be.'),
	415: because('The request has another content type than it may have.'),
	422: because('The key came with another request before.'),
	507: because('The disk is full.'),
} as const;

/** Refusals of operations that only look: of everything, and of one thing by its id. */
export const LOOKING = ALWAYS;
export const LOOKING_AT_ONE = { ...ALWAYS, ...MISSING } as const;

/** Refusals of operations that decide something. */
export const REFUSED = { ...ALWAYS, ...DECIDING } as const;

/** Refused now, with a time to come back. */
export const BUSY = {
	503: because('Too much is asked for at once; the header Retry-After says when to come back.'),
} as const;

export const TOO_OFTEN = { 429: because('Tried too often.') } as const;
