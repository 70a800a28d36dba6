import type { Person } from './people.ts';
import type { AccountsDatabase, Role } from './tables.ts';

/** A browser in which somebody is signed in. */
export type Session = {
	readonly id: string;
	readonly device: string;
	readonly signedInAt: string;
	readonly seenAt: string;
};

/** A session as its token finds it. */
export type FoundSession = Session & {
	readonly person: Person;
	/** What that person may do in the home that was asked for; null = not come in. */
	readonly role: Role | null;
	readonly changedAt: string;
	/** The token shown is the one before the last change. */
	readonly isPrevious: boolean;
};

export async function addSession(
	db: AccountsDatabase,
	session: {
		readonly id: string;
		readonly person: string;
		readonly tokenHash: string;
		readonly device: string;
		readonly at: string;
	},
): Promise<void> {
	const { id, person, tokenHash, device, at } = session;
	await db
		.insertInto('session')
		.values({
			id,
			person,
			token_hash: tokenHash,
			previous_hash: null,
			changed_at: at,
			device,
			signed_in_at: at,
			seen_at: at,
		})
		.execute();
}

/** The session of a token, or with an id, and what its person may do in `home`; null where there is none. */
export async function sessionWith(
	db: AccountsDatabase,
	by: { readonly tokenHash: string } | { readonly id: string },
	home: string | null,
): Promise<FoundSession | null> {
	const found = db
		.selectFrom('session')
		.innerJoin('person', 'person.id', 'session.person')
		.leftJoin('membership', (join) =>
			join.onRef('membership.person', '=', 'session.person').on('membership.home', '=', home ?? ''),
		)
		.select([
			'session.id',
			'session.device',
			'session.signed_in_at',
			'session.seen_at',
			'session.changed_at',
			'session.previous_hash',
			'person.id as person',
			'person.name',
			'person.is_host',
			'person.created_at',
			'membership.role',
		])
		.where((either) =>
			'id' in by
				? either('session.id', '=', by.id)
				: either.or([either('token_hash', '=', by.tokenHash), either('previous_hash', '=', by.tokenHash)]),
		);
	const row = await found.executeTakeFirst();
	if (!row) return null;
	return {
		id: row.id,
		device: row.device,
		signedInAt: row.signed_in_at,
		seenAt: row.seen_at,
		changedAt: row.changed_at,
		isPrevious: 'tokenHash' in by && row.previous_hash === by.tokenHash,
		person: { id: row.person, name: row.name, isHost: row.is_host === 1, createdAt: row.created_at },
		role: row.role,
	};
}

/** Gives the session a new token, keeping the old one for a moment; false where another request has just done so. */
export async function changeToken(
	db: AccountsDatabase,
	{ id, from, to, at }: { readonly id: string; readonly from: string; readonly to: string; readonly at: string },
): Promise<boolean> {
	const changed = await db
		.updateTable('session')
		.set({ token_hash: to, previous_hash: from, changed_at: at, seen_at: at })
		.where('id', '=', id)
		.where('token_hash', '=', from)
		.executeTakeFirst();
	return changed.numUpdatedRows === 1n;
}

export async function noteSeen(db: AccountsDatabase, id: string, at: string): Promise<void> {
	await db.updateTable('session').set({ seen_at: at }).where('id', '=', id).execute();
}

/** The newest first. */
export async function sessionsOf(db: AccountsDatabase, person: string): Promise<Session[]> {
	const rows = await db
		.selectFrom('session')
		.select(['id', 'device', 'signed_in_at', 'seen_at'])
		.where('person', '=', person)
		.orderBy('signed_in_at', 'desc')
		.execute();
	return rows.map(({ id, device, signed_in_at, seen_at }) => ({
		id,
		device,
		signedInAt: signed_in_at,
		seenAt: seen_at,
	}));
}

/** Removes all sessions that were seen last, or begun, before these moments. */
export async function removeOldSessions(
	db: AccountsDatabase,
	{ seenBefore, begunBefore }: { readonly seenBefore: string; readonly begunBefore: string },
): Promise<void> {
	await db
		.deleteFrom('session')
		.where((either) => either.or([either('seen_at', '<', seenBefore), either('signed_in_at', '<', begunBefore)]))
		.execute();
}

/** Ends one session of a person, or, without an id, all of them but `except`. */
export async function endSessions(
	db: AccountsDatabase,
	person: string,
	{ id, except }: { readonly id?: string; readonly except?: string } = {},
): Promise<void> {
	let query = db.deleteFrom('session').where('person', '=', person);
	if (id !== undefined) query = query.where('id', '=', id);
	if (except !== undefined) query = query.where('id', '!=', except);
	await query.execute();
}
