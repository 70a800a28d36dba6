import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto';
import { promisify } from 'node:util';
import { PASSWORD_LETTERS } from '../../language/letters.ts';
import { say } from '../../language/speak.ts';
import { createTurns } from '../../photo/readers/turns.ts';
import { UserError } from '../errors.ts';
import { isCommonPassword } from './common-passwords.ts';

/** scrypt, as the OWASP Password Storage Cheat Sheet asks: N = 2^16, r = 8, p = 2 (64 MiB). */
const COST = { N: 2 ** 16, r: 8, p: 2 } as const;
const HASH_BYTES = 32;
const SALT_BYTES = 16;

/** Hashes worked out at once: each holds 64 MiB. */
const turns = createTurns(2);
const derive = promisify<string, Buffer, number, ScryptOptions, Buffer>(scrypt);

type Cost = { readonly N: number; readonly r: number; readonly p: number };

const hashOf = (password: string, salt: Buffer, { N, r, p }: Cost): Promise<Buffer> =>
	turns.take(() => derive(password.normalize('NFC'), salt, HASH_BYTES, { N, r, p, maxmem: 256 * N * r }));

const written = ({ N, r, p }: Cost, salt: Buffer, hash: Buffer): string =>
	['scrypt', N, r, p, salt.toString('base64url'), hash.toString('base64url')].join('$');

/** What is kept of a password: its hash, with salt and cost. Throws `UserError` where it is too short, plain or common, or holds the name. */
export async function hashedPassword(password: string, name: string): Promise<string> {
	const letters = [...password].length;
	const { least } = PASSWORD_LETTERS;
	if (letters < least) throw new UserError('bad-request', say('hosting.tooShort', { least, came: letters }));
	if (new Set(password.toLowerCase()).size < 5 || password.toLowerCase().includes(name.toLowerCase()))
		throw new UserError('bad-request', say('hosting.tooPlain'));
	if (isCommonPassword(password)) throw new UserError('bad-request', say('hosting.tooCommon'));
	const salt = randomBytes(SALT_BYTES);
	return written(COST, salt, await hashOf(password, salt, COST));
}

/** Something to compare with where nobody has that name, so that the answer takes as long. */
const NOBODY = written(COST, Buffer.alloc(SALT_BYTES), Buffer.alloc(HASH_BYTES));

/** Whether it is the password; `kept` = null where there is none. Takes as long either way. */
export async function isPassword(password: string, kept: string | null): Promise<boolean> {
	const [, N, r, p, salt, hash] = (kept ?? NOBODY).split('$');
	const cost = { N: Number(N), r: Number(r), p: Number(p) };
	const found = await hashOf(password, Buffer.from(salt!, 'base64url'), cost);
	return timingSafeEqual(found, Buffer.from(hash!, 'base64url')) && kept !== null;
}
