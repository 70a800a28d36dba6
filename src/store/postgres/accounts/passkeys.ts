import type { AccountsDatabase } from './tables.ts';

/** A key that a person's device keeps; it never leaves that, here lies its public half. */
export type Passkey = {
	/** As the authenticator gave it, base64url. */
	readonly id: string;
	readonly person: string;
	readonly publicKey: Uint8Array;
	/** Raised by some authenticators at each use. */
	readonly counter: number;
	readonly transports: readonly string[];
	readonly device: string;
	readonly addedAt: string;
};

/** False where somebody has that passkey already, whoever it is. */
export async function addPasskey(db: AccountsDatabase, passkey: Passkey): Promise<boolean> {
	const { id, person, publicKey, counter, transports, device, addedAt } = passkey;
	const added = await db
		.insertInto('passkey')
		.values({
			id,
			person,
			public_key: Buffer.from(publicKey),
			counter,
			transports: transports.join(' '),
			device,
			added_at: addedAt,
		})
		.onConflict((conflict) => conflict.column('id').doNothing())
		.executeTakeFirst();
	return added.numInsertedOrUpdatedRows === 1n;
}

type Where = { readonly id: string } | { readonly person: string };

/** Passkeys by their own id, or all of a person, oldest first. */
export async function passkeysWith(db: AccountsDatabase, where: Where): Promise<Passkey[]> {
	const query = db.selectFrom('passkey').selectAll().orderBy('added_at');
	const rows = await ('id' in where
		? query.where('id', '=', where.id)
		: query.where('person', '=', where.person)
	).execute();
	return rows.map(({ id, person, public_key, counter, transports, device, added_at }) => ({
		id,
		person,
		publicKey: new Uint8Array(public_key),
		counter: Number(counter),
		transports: transports.split(' ').filter(Boolean),
		device,
		addedAt: added_at,
	}));
}

export async function saveCounter(db: AccountsDatabase, id: string, counter: number): Promise<void> {
	await db.updateTable('passkey').set({ counter }).where('id', '=', id).execute();
}

export async function removePasskey(db: AccountsDatabase, person: string, id: string): Promise<void> {
	await db.deleteFrom('passkey').where('id', '=', id).where('person', '=', person).execute();
}

/** Keeps what a browser is asked to sign, and who was asked; old ones go. */
export async function addChallenge(
	db: AccountsDatabase,
	asked: {
		readonly id: string;
		readonly askedOf: string;
		readonly challenge: string;
		readonly expiresAt: string;
		readonly now: string;
	},
): Promise<void> {
	const { id, askedOf, challenge, expiresAt, now } = asked;
	await db.deleteFrom('challenge').where('expires_at', '<=', now).execute();
	await db.insertInto('challenge').values({ id, asked_of: askedOf, challenge, expires_at: expiresAt }).execute();
}

/** Takes it out: each is good once. null where it is too old, was asked of another, or is none. */
export async function takeChallenge(
	db: AccountsDatabase,
	{ id, askedOf, now }: { readonly id: string; readonly askedOf: string; readonly now: string },
): Promise<string | null> {
	const row = await db
		.deleteFrom('challenge')
		.where('id', '=', id)
		.where('asked_of', '=', askedOf)
		.where('expires_at', '>', now)
		.returning('challenge')
		.executeTakeFirst();
	return row?.challenge ?? null;
}
