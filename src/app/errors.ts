import { say } from '../language/speak.ts';
/** Everything that can go wrong for a user of the HTTP interface: code, status. Messages always say what was expected, for what, what came. */
export const ERRORS = {
	'bad-request': 400,
	'not-found': 404,
	'foreign-host': 403,
	'foreign-origin': 403,
	'not-paired': 401,
	'other-device': 403,
	'wrong-code': 403,
	'not-signed-in': 401,
	'wrong-sign-in': 403,
	'only-looking': 403,
	'too-many-tries': 429,
	'too-large': 413,
	'not-a-photo': 415,
	conflict: 409,
	stale: 409,
	'key-reused': 422,
	'disk-full': 507,
	busy: 503,
	'not-reached': 503,
} as const;

export type ErrorCode = keyof typeof ERRORS;

/** An error whose message is meant for the person using the program. */
export class UserError extends Error {
	readonly code: ErrorCode;
	readonly status: number;
	/** When to come back, in seconds, for what is refused only now. */
	readonly retryAfterS: number | undefined;
	/** What goes out beside code and message, such as what was changed meanwhile. */
	readonly details: object;

	constructor(
		code: ErrorCode,
		message: string,
		{ retryAfterS, details = {} }: { readonly retryAfterS?: number; readonly details?: object } = {},
	) {
		super(message);
		this.name = 'UserError';
		this.code = code;
		this.status = ERRORS[code];
		this.retryAfterS = retryAfterS;
		this.details = details;
	}
}

/** The error for an address that names nothing: `what` as in "garment". */
export const notFound = (what: string, id: string): UserError =>
	new UserError('not-found', say('refusals.notFound', { what, id: id.slice(0, 80) }));
