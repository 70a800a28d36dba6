import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import { hostname, networkInterfaces } from 'node:os';
import { UserError } from './errors.ts';

const CODE_LIFETIME_MS = 10 * 60_000;
/** Wrong tries after which the code is thrown away: with 10^8 codes a guess succeeds once in 20 million. */
const TRIES_A_CODE = 5;

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Equal or not, in a time that does not tell how much of it was right. */
const sameSecret = (a: string, b: string): boolean => timingSafeEqual(digest(a), digest(b));

/** Who on the local network may come in: devices that once gave the code shown on this computer. */
export type Sharing = {
	readonly code: () => { readonly code: string; readonly validForMs: number };
	/** A token for the device, or throws `wrong-code` / `too-many-tries`. */
	readonly pair: (code: string) => string;
	readonly isPaired: (token: string | undefined) => boolean;
	/** Names and addresses of this computer on the local network, lower case. */
	readonly names: () => readonly string[];
};

/** `now` in milliseconds. */
export function createSharing(now: () => number): Sharing {
	let current = { code: '', madeAt: Number.NEGATIVE_INFINITY, triesLeft: 0 };
	const tokens = new Set<string>();
	const fresh = () => {
		if (now() - current.madeAt > CODE_LIFETIME_MS || current.triesLeft <= 0) {
			current = { code: String(randomInt(1e8)).padStart(8, '0'), madeAt: now(), triesLeft: TRIES_A_CODE };
		}
		return current;
	};
	return {
		code: () => {
			const { code, madeAt } = fresh();
			return { code, validForMs: CODE_LIFETIME_MS - (now() - madeAt) };
		},
		pair: (given) => {
			const expired = now() - current.madeAt > CODE_LIFETIME_MS;
			if (expired || current.triesLeft <= 0) {
				throw new UserError(
					'too-many-tries',
					'Expected a code that is still valid for pairing this device; the last one has expired or was tried too often. Ask for a new code on the computer that runs Dyelot.',
				);
			}
			current = { ...current, triesLeft: current.triesLeft - 1 };
			if (!sameSecret(given.replace(/\D/g, ''), current.code)) {
				throw new UserError(
					'wrong-code',
					`Expected the 8 digits shown on the computer for pairing this device; received others. ${current.triesLeft} tries are left.`,
				);
			}
			current = { ...current, triesLeft: 0 };
			const token = randomBytes(32).toString('base64url');
			tokens.add(digest(token).toString('hex'));
			return token;
		},
		isPaired: (token) => token !== undefined && tokens.has(digest(token).toString('hex')),
		names: () => [
			hostname().toLowerCase(),
			`${hostname().toLowerCase()}.local`,
			...Object.values(networkInterfaces())
				.flatMap((list) => list ?? [])
				.map((net) => (net.family === 'IPv6' ? `[${net.address.toLowerCase()}]` : net.address)),
		],
	};
}
