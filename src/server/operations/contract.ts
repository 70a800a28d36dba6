import type { Static, TSchema } from 'typebox';
import type { OperationId, Operations } from './all.ts';

type Schema<Id extends OperationId> = Operations[Id]['schema'];

/** What stands in the address; `undefined` where nothing does. */
export type ParamsOf<Id extends OperationId> =
	Schema<Id> extends { readonly params: infer S extends TSchema } ? Static<S> : undefined;

/** What may stand behind the address; `undefined` where nothing may. */
export type QueryOf<Id extends OperationId> =
	Schema<Id> extends { readonly querystring: infer S extends TSchema } ? Static<S> : undefined;

/** The JSON that is sent; `undefined` where none is. */
export type BodyOf<Id extends OperationId> =
	Schema<Id> extends { readonly body: infer S extends TSchema } ? Static<S> : undefined;

type Well = 200 | 201 | 202;
type Answers<R> = { [Status in keyof R & Well]: R[Status] extends TSchema ? Static<R[Status]> : never };

/** What is answered where all goes well; `never` for a file. */
export type AnswerOf<Id extends OperationId> = Answers<Schema<Id>['response']>[keyof Schema<Id>['response'] & Well];

/** Method and address, as in "GET /api/seasons/:id". */
export type AddressOf<Id extends OperationId> = `${Operations[Id]['method']} ${Operations[Id]['url']}`;

/** The same for whoever sends it: nothing in it is changed. */
export type Sent<T> = T extends readonly (infer One)[]
	? readonly Sent<One>[]
	: T extends object
		? { readonly [Key in keyof T]: Sent<T[Key]> }
		: T;
