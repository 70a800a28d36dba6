import { type TSchema, Type } from 'typebox';
import { byId, seen } from '../schemas/basics.ts';
import { removed } from './answers.ts';
import { LOOKING, LOOKING_AT_ONE, REFUSED } from './refusals.ts';

/** What a request brings beside its address, and what else it may be refused for. */
type More = {
	/** Left out: the id that the address names, where it names one. */
	readonly params?: TSchema;
	readonly querystring?: TSchema;
	readonly body?: TSchema;
	readonly consumes?: readonly string[];
	/** Refusals beside those of every operation of its method. */
	readonly also?: object;
};

type Params<Url, Sent> = Sent extends { readonly params: TSchema }
	? unknown
	: Url extends `${string}/:id${string}`
		? { readonly params: typeof byId }
		: unknown;

/** An operation that has no name yet. */
type Unnamed<Method, Url, Status extends number, Answer, Refusals, Sent> = {
	readonly method: Method;
	readonly url: Url;
	readonly schema: { readonly summary: string } & Params<Url, Sent> &
		Omit<Sent, 'also'> & {
			readonly response: { readonly [S in Status]: Answer } & Refusals &
				(Sent extends { readonly also: infer Also } ? Also : unknown);
		};
};

/** Operations of a method, whose answers have that status where all goes well. `one`: refusals where the address names one entry. */
const operationsOf =
	<const Method extends string, const Status extends number, Refusals extends object>(
		method: Method,
		status: Status,
		all: Refusals,
		one: Refusals,
	) =>
	<const Url extends string, Answer extends object, const Sent extends More = object>(
		url: Url,
		summary: string,
		answer: Answer,
		{ also, ...sent }: Sent & More = {} as Sent,
	) => {
		const isOfOne = url.includes('/:id');
		const response = { [status]: answer, ...(isOfOne ? one : all), ...also };
		const schema = { summary, ...(isOfOne ? { params: byId } : {}), ...sent, response };
		return { method, url, schema } as unknown as Unnamed<Method, Url, Status, Answer, Refusals, Sent>;
	};

/** Shows something. */
export const get = operationsOf('GET', 200, LOOKING, LOOKING_AT_ONE as typeof LOOKING);
/** Does something, and answers once it is done. */
export const post = operationsOf('POST', 200, REFUSED, REFUSED);
/** Makes something new. */
export const add = operationsOf('POST', 201, REFUSED, REFUSED);
/** Begins what is done after the answer. */
export const begin = operationsOf('POST', 202, REFUSED, REFUSED);
/** Replaces something. */
export const put = operationsOf('PUT', 200, REFUSED, REFUSED);
/** Changes parts of something; answers with it as it is then. */
export const patch = operationsOf('PATCH', 200, REFUSED, REFUSED);
/** Takes something away. */
export const remove = operationsOf('DELETE', 200, REFUSED, REFUSED);

/** Takes an entry away, by its id and the version that was seen. */
export const removeEntry = <const Url extends string>(url: Url, summary: string) =>
	remove(url, summary, removed, { querystring: seen });

/** Takes rows from a table of the user's own. */
export const takeTable = <const Url extends string, Answer extends TSchema>(url: Url, what: string, answer: Answer) =>
	post(url, `${what} from a table (text/csv); with preview only what it would do`, answer, {
		consumes: ['text/csv'],
		querystring: Type.Object({ preview: Type.Boolean({ default: false }) }),
	});

type Table = Readonly<Record<string, { readonly schema: object }>>;

/** Operations by their names, which are their ids, under one tag. */
export const named = <Operations extends Table>(tag: string, operations: Operations) =>
	Object.fromEntries(
		Object.entries(operations).map(([operationId, { schema, ...address }]) => [
			operationId,
			{ ...address, schema: { operationId, tags: [tag], ...schema } },
		]),
	) as { readonly [Id in keyof Operations]: Operations[Id] & { readonly schema: { readonly operationId: Id } } };
