import type { AccountsDatabase, Role } from './tables.ts';

/** What a link lets into: a home of somebody else, or, without one, a home of one's own. */
export type Invitation = {
	readonly home: string | null;
	readonly role: Role | null;
	/** It makes whoever takes it the host. */
	readonly isHost: boolean;
};

export async function addInvitation(
	db: AccountsDatabase,
	invitation: Invitation & { readonly tokenHash: string; readonly expiresAt: string },
): Promise<void> {
	const { tokenHash, home, role, isHost, expiresAt } = invitation;
	await db
		.insertInto('invitation')
		.values({ token_hash: tokenHash, home, role, is_host: isHost ? 1 : 0, expires_at: expiresAt })
		.execute();
}

/** What the link lets into and the name of that home; null where it is used, too old, or none. */
export async function invitationWith(
	db: AccountsDatabase,
	tokenHash: string,
	now: string,
): Promise<(Invitation & { readonly homeName: string | null }) | null> {
	const row = await db
		.selectFrom('invitation')
		.leftJoin('home', 'home.id', 'invitation.home')
		.select(['invitation.home', 'invitation.role', 'invitation.is_host', 'home.name'])
		.where('token_hash', '=', tokenHash)
		.where('expires_at', '>', now)
		.executeTakeFirst();
	return row ? { home: row.home, role: row.role, isHost: row.is_host === 1, homeName: row.name } : null;
}

/** Uses a link up: of several who try at once, one alone is told true. Old ones go with it. */
export async function takeInvitation(db: AccountsDatabase, tokenHash: string, now: string): Promise<boolean> {
	const used = await db
		.deleteFrom('invitation')
		.where('token_hash', '=', tokenHash)
		.where('expires_at', '>', now)
		.executeTakeFirst();
	await db.deleteFrom('invitation').where('expires_at', '<=', now).execute();
	return used.numDeletedRows === 1n;
}

/** Makes all links into a home worthless. */
export async function removeInvitations(db: AccountsDatabase, home: string): Promise<void> {
	await db.deleteFrom('invitation').where('home', '=', home).execute();
}
