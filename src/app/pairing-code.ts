import { createHash, randomInt, timingSafeEqual } from 'node:crypto';
import { say } from '../language/speak.ts';
import { UserError } from './errors.ts';

const CODE_LIFETIME_MS = 10 * 60_000;
/** Wrong tries after which the code is thrown away: with 10^8 codes a guess succeeds once in 20 million. */
const TRIES_A_CODE = 5;

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Equal or not, in a time that does not tell how much of it was right. */
const sameSecret = (a: string, b: string): boolean => timingSafeEqual(digest(a), digest(b));

/** The code that is shown on this computer: for one device, five tries, ten minutes. */
export type PairingCode = {
	/** The code to show, a new one where the last is used up. */
	show(): { readonly code: string; readonly validForMs: number };
	/** Uses the code up, or throws `wrong-code` / `too-many-tries`. */
	use(given: string): void;
};

/** `now` in milliseconds. */
export function createPairingCode(now: () => number): PairingCode {
	let current = { code: '', madeAt: Number.NEGATIVE_INFINITY, triesLeft: 0 };
	const isOver = () => now() - current.madeAt > CODE_LIFETIME_MS || current.triesLeft <= 0;
	return {
		show: () => {
			if (isOver()) current = { code: String(randomInt(1e8)).padStart(8, '0'), madeAt: now(), triesLeft: TRIES_A_CODE };
			return { code: current.code, validForMs: CODE_LIFETIME_MS - (now() - current.madeAt) };
		},
		use: (given) => {
			if (isOver()) throw new UserError('too-many-tries', say('refusals.codeOver'));
			current = { ...current, triesLeft: current.triesLeft - 1 };
			if (!sameSecret(given.replace(/\D/g, ''), current.code))
				throw new UserError('wrong-code', say('refusals.codeWrong', { count: current.triesLeft }));
			current = { ...current, triesLeft: 0 };
		},
	};
}
