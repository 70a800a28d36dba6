import { UserError } from '../../app/errors.ts';
import { isOutOfReach } from '../../app/hosting/out-of-reach.ts';
import { say } from '../../language/speak.ts';

const COME_BACK_S = 5;

/** Text that no database holds: it has the character U+0000, or half of one (PostgreSQL manual, appendix A). */
const isNoText = (error: unknown): boolean => (error as { code?: string }).code === '22021';

/**
 * The refusal where database or photos cannot be reached: nothing that was answered is lost, and it may be tried again; and where an address holds
 * what is no text. null for every other error.
 */
export function meaningOfReach(error: unknown): UserError | null {
	if (isOutOfReach(error)) return new UserError('not-reached', say('hosting.elsewhere'), { retryAfterS: COME_BACK_S });
	return isNoText(error) ? new UserError('bad-request', say('hosting.noText')) : null;
}
