import { sql } from 'kysely';
import type { AccountsDatabase } from './tables.ts';

/** Somebody who signs in here. */
export type Person = {
	readonly id: string;
	readonly name: string;
	/** Lets people in and puts them out. */
	readonly isHost: boolean;
	readonly createdAt: string;
};

/** The same with the hash of the password; null = a passkey alone. */
export type PersonWithSecret = Person & { readonly password: string | null };

/** Two names are one where they differ in case or in the way they are written in Unicode alone. */
const keyOf = (name: string): string => name.normalize('NFKC').toLowerCase();

type Row = {
	readonly id: string;
	readonly name: string;
	readonly is_host: number;
	readonly created_at: string;
	readonly password: string | null;
};

const personOf = ({ id, name, is_host, created_at, password }: Row): PersonWithSecret => ({
	id,
	name,
	isHost: is_host === 1,
	createdAt: created_at,
	password,
});

const withoutSecret = ({ password: _secret, ...person }: PersonWithSecret): Person => person;

export const hasPeople = async (db: AccountsDatabase): Promise<boolean> =>
	(await db.selectFrom('person').select('id').limit(1).executeTakeFirst()) !== undefined;

/** Newcomers come in one after the other; within a transaction. */
export async function takeTurnAsNewcomer(db: AccountsDatabase): Promise<void> {
	await sql`select pg_advisory_xact_lock(hashtextextended('dyelot newcomers', 0))`.execute(db);
}

/** False where somebody has that name already. */
export async function addPerson(db: AccountsDatabase, person: PersonWithSecret): Promise<boolean> {
	const { id, name, isHost, createdAt, password } = person;
	const row = { id, name, name_key: keyOf(name), password, is_host: isHost ? 1 : 0, created_at: createdAt };
	const added = await db
		.insertInto('person')
		.values(row)
		.onConflict((conflict) => conflict.column('name_key').doNothing())
		.executeTakeFirst();
	return added.numInsertedOrUpdatedRows === 1n;
}

export async function personCalled(db: AccountsDatabase, name: string): Promise<PersonWithSecret | null> {
	const row = await db.selectFrom('person').selectAll().where('name_key', '=', keyOf(name)).executeTakeFirst();
	return row ? personOf(row) : null;
}

export async function personWithId(db: AccountsDatabase, id: string): Promise<PersonWithSecret | null> {
	const row = await db.selectFrom('person').selectAll().where('id', '=', id).executeTakeFirst();
	return row ? personOf(row) : null;
}

/** Everybody, by name. */
export async function listPeople(db: AccountsDatabase): Promise<Person[]> {
	const rows = await db.selectFrom('person').selectAll().orderBy('name_key').execute();
	return rows.map((row) => withoutSecret(personOf(row)));
}

export async function setPassword(db: AccountsDatabase, id: string, password: string | null): Promise<void> {
	await db.updateTable('person').set({ password }).where('id', '=', id).execute();
}

/** Their sessions and passkeys go with them; homes stay. */
export async function removePerson(db: AccountsDatabase, id: string): Promise<void> {
	await db.deleteFrom('person').where('id', '=', id).execute();
}
