import { isIPv6 } from 'node:net';
import { say } from '../../language/speak.ts';
import { type Person, personCalled } from '../../store/postgres/accounts/people.ts';
import { countTry, forgetTries } from '../../store/postgres/accounts/tries.ts';
import { UserError } from '../errors.ts';
import type { Host } from './host.ts';
import { isPassword } from './passwords.ts';

/** Tries within a quarter of an hour: of one name, and from one address, where several people may sit. */
const WITHIN_MS = 15 * 60 * 1000;
const OF_A_NAME = 10;
const OF_AN_ADDRESS = 50;

/** Counts a try to come in; throws `too-many-tries` where there were enough. */
export async function countAttempt(
	{ accounts, now }: Pick<Host, 'accounts' | 'now'>,
	key: string,
	most: number,
): Promise<void> {
	const at = now();
	const since = new Date(at.getTime() - WITHIN_MS).toISOString();
	const tries = await countTry(accounts, key, { since, now: at.toISOString() });
	if (tries > most)
		throw new UserError('too-many-tries', say('hosting.tooManyTries'), { retryAfterS: WITHIN_MS / 1000 });
}

/**
 * Who is counted as one: an address, of IPv6 the network of 64 bits that one line is given at least (RFC 6177), since whoever has it may use any
 * address in it.
 */
export function counterpartOf(address: string): string {
	const plain = address.replace(/^::ffff:(?=\d+\.)/i, '');
	if (!isIPv6(plain)) return plain;
	const [head = '', tail] = plain.split('::');
	const groups = (part: string) => part.split(':').filter(Boolean);
	const [first, last] = [groups(head), groups(tail ?? '')];
	const zeros = Array<string>(tail === undefined ? 0 : Math.max(0, 8 - first.length - last.length)).fill('0');
	return `${[...first, ...zeros, ...last].slice(0, 4).join(':')}::/64`;
}

/** The same for whatever anybody may ask from an address. */
export const countFrom = (host: Pick<Host, 'accounts' | 'now'>, address: string): Promise<void> =>
	countAttempt(host, `from:${counterpartOf(address)}`, OF_AN_ADDRESS);

/** Who has that name and password. Throws `wrong-sign-in`, which does not tell what of it was wrong, and `too-many-tries`. */
export async function signIn(
	host: Pick<Host, 'accounts' | 'now'>,
	{ name, password, address }: { readonly name: string; readonly password: string; readonly address: string },
): Promise<Person> {
	const ofName = `name:${name.normalize('NFKC').toLowerCase()}`;
	await countFrom(host, address);
	await countAttempt(host, ofName, OF_A_NAME);
	const person = await personCalled(host.accounts, name);
	if (!(await isPassword(password, person?.password ?? null)) || !person)
		throw new UserError('wrong-sign-in', say('hosting.wrongSignIn'));
	await forgetTries(host.accounts, ofName);
	return person;
}
