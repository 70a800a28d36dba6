import { UserError } from '../../app/errors.ts';
import { say } from '../../language/speak.ts';
import { ObjectStoreError } from '../../store/object-requests.ts';

const COME_BACK_S = 5;

/** The line to the database is down, or it takes nobody just now (PostgreSQL manual, appendix A: classes 08, 53, 57P). */
const SQL_STATES = /^(08|53|57P)/;
const SYSTEM_CODES = new Set(['ECONNREFUSED', 'ECONNRESET', 'ETIMEDOUT', 'EPIPE', 'EHOSTUNREACH', 'ENOTFOUND']);
/** What the driver says where it has no code for it. */
const SAYINGS = /connection terminated|timeout exceeded when trying to connect|connection error/i;

const isUnreached = (error: unknown): boolean => {
	if (error instanceof ObjectStoreError) return true;
	if (error instanceof AggregateError) return error.errors.some(isUnreached);
	if (!(error instanceof Error)) return false;
	const { code = '' } = error as { code?: string };
	return SQL_STATES.test(code) || SYSTEM_CODES.has(code) || SAYINGS.test(error.message);
};

/** Text that no database holds: it has the character U+0000, or half of one (PostgreSQL manual, appendix A). */
const isNoText = (error: unknown): boolean => (error as { code?: string }).code === '22021';

/**
 * The refusal where database or photos cannot be reached: nothing that was answered is lost, and it may be tried again; and where an address holds
 * what is no text. null for every other error.
 */
export function meaningOfReach(error: unknown): UserError | null {
	if (isUnreached(error)) return new UserError('not-reached', say('hosting.elsewhere'), { retryAfterS: COME_BACK_S });
	return isNoText(error) ? new UserError('bad-request', say('hosting.noText')) : null;
}
