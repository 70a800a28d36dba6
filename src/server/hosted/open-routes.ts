import { OPEN_ROUTES as OPEN_AT_HOME, PAGE_ADDRESSES, readable } from '../open-routes.ts';

/** Addresses of the page that only this form has; they hold nothing of anybody. */
export const HOSTED_PAGE_ADDRESSES = ['/join', '/people', '/account'] as const;

/** Addresses that an operator's programs ask, under any name. */
export const OPERATORS_ADDRESSES = ['/health', '/ready'] as const;

/** Every route that may be asked by whoever is not signed in, by method and the exact name under which it is registered. All others are refused. */
export const OPEN_ROUTES: ReadonlySet<string> = new Set([
	...[...OPEN_AT_HOME].filter((route) => !route.includes('/api/')),
	...[...PAGE_ADDRESSES, ...HOSTED_PAGE_ADDRESSES, ...OPERATORS_ADDRESSES].flatMap(readable),
	'POST /api/host/sign-in',
	'POST /api/host/sign-in/passkey',
	'POST /api/host/sign-in/passkey/answer',
	'POST /api/host/link',
	'POST /api/host/join',
	'POST /api/host/join/passkey',
]);

/** Routes that answer a question with a body and change nothing: whoever may look may ask them. */
export const ASKING_ONLY: ReadonlySet<string> = new Set([
	'POST /api/photos/:id/light-trial',
	'POST /api/seasons/:id/line-up/build',
	'POST /api/seasons/:id/line-up/swaps',
	'POST /api/seasons/:id/line-up/what-if',
]);

/** Routes of a home for its owners alone. */
export const OWNERS_ROUTES: ReadonlySet<string> = new Set(['GET /api/backup']);
