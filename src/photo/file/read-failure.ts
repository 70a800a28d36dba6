/** Why a photo could not be read. */
export type ReadFailureReason =
	| 'empty'
	| 'not-a-photo'
	| 'unsupported'
	| 'damaged'
	| 'too-many-bytes'
	| 'too-many-pixels'
	| 'too-slow'
	| 'crashed'
	| 'missing';

/** A failure with a message for the user: what was expected, for what, what came. */
export type ReadFailure = { readonly ok: false; readonly reason: ReadFailureReason; readonly message: string };

export const readFailure = (reason: ReadFailureReason, message: string): ReadFailure => ({
	ok: false,
	reason,
	message,
});
