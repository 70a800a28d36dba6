import type { TSchema } from 'typebox';
import { byId, seen } from '../schemas/basics.ts';
import { removed } from './answers.ts';
import { LOOKING_AT_ONE, REFUSED } from './refusals.ts';

/** Shows one thing, or what belongs to it, by its id. */
export const look = <Id extends string, Url extends string, Shown extends TSchema>(
	operationId: Id,
	url: Url,
	tags: readonly string[],
	summary: string,
	shown: Shown,
) =>
	({
		method: 'GET',
		url,
		schema: { operationId, tags, summary, params: byId, response: { 200: shown, ...LOOKING_AT_ONE } },
	}) as const;

/** Does something with one thing that needs no more than its id. */
export const act = <Id extends string, Url extends string, Done extends TSchema>(
	operationId: Id,
	url: Url,
	tags: readonly string[],
	summary: string,
	done: Done,
) =>
	({
		method: 'POST',
		url,
		schema: { operationId, tags, summary, params: byId, response: { 200: done, ...REFUSED } },
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
