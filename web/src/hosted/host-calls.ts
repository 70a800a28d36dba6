import type { MembersHome } from '../../../src/store/postgres/accounts/homes.ts';
import type { Person } from '../../../src/store/postgres/accounts/people.ts';
import type { Session } from '../../../src/store/postgres/accounts/sessions.ts';
import { request } from '../api/request.ts';

/** Who is signed in, where, and with what. */
export type Account = {
	readonly person: Person;
	readonly hasPassword: boolean;
	readonly sessions: readonly (Session & { readonly isThis: boolean })[];
	readonly passkeys: readonly { readonly id: string; readonly device: string; readonly addedAt: string }[];
};

type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

/** Asks about people, homes and sessions. Throws `RequestProblem`. */
export const ask = <T = unknown>(method: Method, path: string, body?: unknown): Promise<T> =>
	request<T>(method, `/api/host${path}`, body);

/** The account, as it is kept on the page. */
export const accountQuery = { queryKey: ['host/account'], queryFn: () => ask<Account>('GET', '/account') };

/** The homes of whoever is signed in. */
export const homesQuery = { queryKey: ['host/homes'], queryFn: () => ask<MembersHome[]>('GET', '/homes') };

/** What somebody may do in a home, as keys of its words. */
export const ROLE_WORDS = { own: 'doorway.own', plan: 'doorway.plan', look: 'doorway.look' } as const;
