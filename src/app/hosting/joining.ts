import { say } from '../../language/speak.ts';
import { createHome, letIn } from '../../store/postgres/accounts/homes.ts';
import {
	addInvitation,
	type Invitation,
	invitationWith,
	takeInvitation,
} from '../../store/postgres/accounts/invitations.ts';
import type { Passkey } from '../../store/postgres/accounts/passkeys.ts';
import { addPerson, hasPeople, type Person, takeTurnAsNewcomer } from '../../store/postgres/accounts/people.ts';
import type { AccountsDatabase } from '../../store/postgres/accounts/tables.ts';
import { UserError } from '../errors.ts';
import { hashOfToken, newToken } from '../token.ts';
import type { Host } from './host.ts';
import { keepPasskey } from './passkeys.ts';

/** A link is good for a day, and once. */
const GOOD_MS = 24 * 3600 * 1000;

type Joining = Pick<Host, 'accounts' | 'now' | 'newId'>;

/** A link that lets somebody in. The secret stands behind #, which browsers send to no server. */
export async function invite({ accounts, now }: Joining, origin: URL, invitation: Invitation): Promise<string> {
	const token = newToken();
	const expiresAt = new Date(now().getTime() + GOOD_MS).toISOString();
	await addInvitation(accounts, { ...invitation, tokenHash: hashOfToken(token), expiresAt });
	return new URL(`/join#${token}`, origin).href;
}

/** The link for whoever keeps this host, as long as nobody has come in; null later. */
export async function hostsLink(host: Joining, origin: URL): Promise<string | null> {
	return (await hasPeople(host.accounts)) ? null : invite(host, origin, { home: null, role: null, isHost: true });
}

const usedUp = () => new UserError('not-found', say('hosting.usedLink'));

/** What a link lets into. Throws `not-found` where it is used, too old, or none. */
export async function lookAtLink({ accounts, now }: Joining, token: string) {
	const found = await invitationWith(accounts, hashOfToken(token), now().toISOString());
	if (!found || (found.isHost && (await hasPeople(accounts)))) throw usedUp();
	return found;
}

/** Uses the link up and lets the person into what it says; within a transaction. */
async function take(
	trx: AccountsDatabase,
	token: string,
	{ home, role }: Invitation,
	{ person, at }: { readonly person: string; readonly at: string },
): Promise<void> {
	if (!(await takeInvitation(trx, hashOfToken(token), at))) throw usedUp();
	if (home !== null && role !== null) await letIn(trx, { home, person, role, at });
}

/** Somebody new comes in by a link, with a password's hash or a passkey; whoever keeps no home of another begins one. Throws `not-found`, `conflict`. */
export async function joinAnew(
	host: Joining,
	token: string,
	newcomer: {
		readonly name: string;
		readonly password: string | null;
		readonly passkey: Omit<Passkey, 'person' | 'addedAt'> | null;
	},
): Promise<Person> {
	const { name, password, passkey } = newcomer;
	return host.accounts.transaction().execute(async (trx) => {
		// Several links for the host may have been printed, by several servers; the first that is used counts.
		await takeTurnAsNewcomer(trx);
		const invitation = await lookAtLink({ ...host, accounts: trx }, token);
		const { home, isHost } = invitation;
		const at = host.now().toISOString();
		const person = { id: host.newId(), name, isHost, createdAt: at };
		if (!(await addPerson(trx, { ...person, password })))
			throw new UserError('conflict', say('hosting.takenName', { name }));
		await take(trx, token, invitation, { person: person.id, at });
		if (passkey) await keepPasskey(trx, { ...passkey, person: person.id, addedAt: at });
		if (home === null)
			await createHome(trx, { id: host.newId(), name: say('hosting.firstHome'), person: person.id, at });
		return person;
	});
}

/** Somebody who is signed in comes into a home by a link. Throws `not-found`. */
export async function joinHome(host: Joining, token: string, person: Person): Promise<{ home: string }> {
	return host.accounts.transaction().execute(async (trx) => {
		const invitation = await lookAtLink({ ...host, accounts: trx }, token);
		if (invitation.home === null) throw new UserError('conflict', say('hosting.linkForNewcomers'));
		await take(trx, token, invitation, { person: person.id, at: host.now().toISOString() });
		return { home: invitation.home };
	});
}
