import { spokenLanguage } from '../../../src/language/speak.ts';
import type { OperationId } from '../../../src/server/operations/all.ts';
import type { AnswerOf, BodyOf, ParamsOf, QueryOf, Sent } from '../../../src/server/operations/contract.ts';
import { homeAddress } from './home-address.ts';
import { ADDRESSES, type CalledId } from './operations.ts';
import { request } from './request.ts';

type Part<Name extends string, T> = [T] extends [undefined] ? object : { readonly [N in Name]: Sent<T> };

/** What stands in and behind an operation's address. */
type Place<Id extends OperationId> = Part<'params', ParamsOf<Id>> & { readonly query?: Sent<QueryOf<Id>> };

/** What an operation is called with: what stands in its address, behind it, and what is sent; `raw` is sent as it is. */
type Given<Id extends OperationId> = Place<Id> & Part<'body', BodyOf<Id>> & { readonly raw?: Blob };

/** Needed only where something stands in the address. */
type Placed<Id extends OperationId> = [ParamsOf<Id>] extends [undefined] ? [place?: Place<Id>] : [place: Place<Id>];

type AnyPlace = {
	readonly params?: Readonly<Record<string, unknown>>;
	readonly query?: Readonly<Record<string, unknown>>;
};

/** The address of an operation; what is not told is left out behind it. */
export function pathTo<Id extends CalledId>(id: Id, ...place: Placed<Id>): string {
	const { params = {}, query = {} } = (place[0] ?? {}) as AnyPlace;
	const path = ADDRESSES[id]
		.replace(/^\w+ /, '')
		.replace(/:(\w+)/g, (_, name: string) => encodeURIComponent(String(params[name])));
	const told = Object.entries(query).flatMap(([name, value]) =>
		value === undefined ? [] : [[name, String(value)] as [string, string]],
	);
	return told.length > 0 ? `${path}?${new URLSearchParams(told)}` : path;
}

/** The same as the browser itself asks for it: for links, pictures and lines that stay open. */
export const addressOfCall = <Id extends CalledId>(id: Id, ...place: Placed<Id>): string =>
	homeAddress() + pathTo(id, ...place);

/** The same for a file to take along, in the language of the page: the browser would ask for it in its own. */
export const downloadOf = <Id extends CalledId>(id: Id, ...place: Placed<Id>): string =>
	`${addressOfCall(id, ...place)}?language=${spokenLanguage()}`;

/** Calls an operation of the program and returns its answer. Throws `RequestProblem`; what `signal` stops throws as fetch does. */
export function call<Id extends CalledId>(
	id: Id,
	given: Given<Id>,
	options: { readonly signal?: AbortSignal } = {},
): Promise<AnswerOf<Id>> {
	const { body, raw } = given as { readonly body?: unknown; readonly raw?: Blob };
	const [method] = ADDRESSES[id].split(' ') as [string];
	return request<AnswerOf<Id>>(method, pathTo(id, ...([given] as unknown as Placed<Id>)), raw ?? body, options);
}
