import { ObjectStoreError } from '../../store/object-requests.ts';

/** The line to the database is down, or it takes nobody just now (PostgreSQL manual, appendix A: classes 08, 53, 57P). */
const SQL_STATES = /^(08|53|57P)/;
const SYSTEM_CODES = new Set(['ECONNREFUSED', 'ECONNRESET', 'ETIMEDOUT', 'EPIPE', 'EHOSTUNREACH', 'ENOTFOUND']);
/** What the driver says where it has no code for it. */
const SAYINGS = /connection terminated|timeout exceeded when trying to connect|connection error/i;

/** Whether database or object store could not be reached: the same may be tried again later. */
export const isOutOfReach = (error: unknown): boolean => {
	if (error instanceof ObjectStoreError) return true;
	if (error instanceof AggregateError) return error.errors.some(isOutOfReach);
	if (!(error instanceof Error)) return false;
	const { code = '' } = error as { code?: string };
	return SQL_STATES.test(code) || SYSTEM_CODES.has(code) || SAYINGS.test(error.message);
};
