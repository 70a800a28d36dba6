import { type TSchema, Type } from 'typebox';
import { byId, seen } from '../schemas/basics.ts';
import { removed } from './answers.ts';
import { LOOKING_AT_ONE, REFUSED } from './refusals.ts';

/** Operations of one method that need no more than the thing that the address names. */
export const ofOne =
	<Method extends 'GET' | 'POST', Params extends TSchema, Refusals extends object>(
		method: Method,
		params: Params,
		refusals: Refusals,
	) =>
	<Id extends string, Url extends string, Answer extends TSchema>(
		operationId: Id,
		url: Url,
		tags: readonly string[],
		summary: string,
		answer: Answer,
	) =>
		({ method, url, schema: { operationId, tags, summary, params, response: { 200: answer, ...refusals } } }) as const;

/** Shows one thing, or what belongs to it, by its id. */
export const look = ofOne('GET', byId, LOOKING_AT_ONE);

/** Does something with one thing that needs no more than its id. */
export const act = ofOne('POST', byId, REFUSED);

/** Takes rows from a table of the user's own. */
export const takeTable = <Id extends string, Url extends string, Answer extends TSchema>(
	operationId: Id,
	url: Url,
	tags: readonly string[],
	what: string,
	answer: Answer,
) =>
	({
		method: 'POST',
		url,
		schema: {
			operationId,
			tags,
			summary: `${what} from a table (text/csv); with preview only what it would do`,
			consumes: ['text/csv'],
			querystring: Type.Object({ preview: Type.Boolean({ default: false }) }),
			response: { 200: answer, ...REFUSED },
		},
	}) as const;

/** Takes a thing away, by its id and the version that was seen. */
export const removal = <Id extends string, Url extends string>(
	operationId: Id,
	url: Url,
	tags: readonly string[],
	summary: string,
) =>
	({
		method: 'DELETE',
		url,
		schema: {
			operationId,
			tags,
			summary,
			params: byId,
			querystring: seen,
			response: { 200: removed, ...REFUSED },
		},
	}) as const;

/** Changes parts of a thing, by its id; it answers with the thing as it is then. */
export const change = <Id extends string, Url extends string, Body extends TSchema, Changed extends TSchema>(
	operationId: Id,
	url: Url,
	tags: readonly string[],
	summary: string,
	{ body, changed }: { readonly body: Body; readonly changed: Changed },
) =>
	({
		method: 'PATCH',
		url,
		schema: { operationId, tags, summary, params: byId, body, response: { 200: changed, ...REFUSED } },
	}) as const;
