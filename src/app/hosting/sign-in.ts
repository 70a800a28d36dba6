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

/** The same for whatever anybody may ask from an address. */
export const countFrom = (host: Pick<Host, 'accounts' | 'now'>, address: string): Promise<void> =>
	countAttempt(host, `from:${address}`, OF_AN_ADDRESS);

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
