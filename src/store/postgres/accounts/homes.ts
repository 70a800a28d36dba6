import type { AccountsDatabase, Role } from './tables.ts';

/** From the one who may do least to the one who may do all. */
const ROLES: readonly Role[] = ['look', 'plan', 'own'];

/** A home as one of its members sees it. */
export type MembersHome = {
	readonly id: string;
	readonly name: string;
	readonly role: Role;
	readonly createdAt: string;
};

/** Somebody who may come into a home. */
export type Member = { readonly person: string; readonly name: string; readonly role: Role; readonly since: string };

/** The homes that a person may enter, oldest first. */
export async function homesOf(db: AccountsDatabase, person: string): Promise<MembersHome[]> {
	const rows = await db
		.selectFrom('membership')
		.innerJoin('home', 'home.id', 'membership.home')
		.select(['home.id', 'home.name', 'home.created_at', 'membership.role'])
		.where('membership.person', '=', person)
		.orderBy('home.created_at')
		.orderBy('home.id')
		.execute();
	return rows.map(({ id, name, role, created_at }) => ({ id, name, role, createdAt: created_at }));
}

export const isHome = async (db: AccountsDatabase, id: string): Promise<boolean> =>
	(await db.selectFrom('home').select('id').where('id', '=', id).executeTakeFirst()) !== undefined;

/** Makes a home that belongs to the person; within a transaction. */
export async function createHome(
	db: AccountsDatabase,
	{
		id,
		name,
		person,
		at,
	}: { readonly id: string; readonly name: string; readonly person: string; readonly at: string },
): Promise<void> {
	await db.insertInto('home').values({ id, name, created_at: at }).execute();
	await db.insertInto('membership').values({ home: id, person, role: 'own', since: at }).execute();
}

export async function renameHome(db: AccountsDatabase, id: string, name: string): Promise<void> {
	await db.updateTable('home').set({ name }).where('id', '=', id).execute();
}

/** What the person may do in the home; null where they may not come in, or there is none. */
export async function roleIn(db: AccountsDatabase, home: string, person: string): Promise<Role | null> {
	const row = await db
		.selectFrom('membership')
		.select('role')
		.where('home', '=', home)
		.where('person', '=', person)
		.executeTakeFirst();
	return row?.role ?? null;
}

/** Who may come into the home, by name. */
export async function membersOf(db: AccountsDatabase, home: string): Promise<Member[]> {
	return db
		.selectFrom('membership')
		.innerJoin('person', 'person.id', 'membership.person')
		.select(['membership.person', 'person.name', 'membership.role', 'membership.since'])
		.where('membership.home', '=', home)
		.orderBy('person.name_key')
		.execute();
}

/** Lets a person into a home; whoever may do more there already keeps that. */
export async function letIn(
	db: AccountsDatabase,
	{
		home,
		person,
		role,
		at,
	}: { readonly home: string; readonly person: string; readonly role: Role; readonly at: string },
): Promise<void> {
	const known = await roleIn(db, home, person);
	if (known !== null && ROLES.indexOf(known) >= ROLES.indexOf(role)) return;
	await db
		.insertInto('membership')
		.values({ home, person, role, since: at })
		.onConflict((conflict) => conflict.columns(['person', 'home']).doUpdateSet({ role, since: at }))
		.execute();
}

/** Puts a person out of a home; its last owner stays. False where nothing was done. */
export async function putOut(db: AccountsDatabase, home: string, person: string): Promise<boolean> {
	return db.transaction().execute(async (trx) => {
		const members = await trx.selectFrom('membership').selectAll().where('home', '=', home).forUpdate().execute();
		if (!members.some((one) => one.person !== person && one.role === 'own')) return false;
		const gone = await trx
			.deleteFrom('membership')
			.where('home', '=', home)
			.where('person', '=', person)
			.executeTakeFirst();
		return gone.numDeletedRows === 1n;
	});
}

/** Takes a home away with all who may come in; what it holds is taken away by itself. */
export async function removeHome(db: AccountsDatabase, home: string): Promise<void> {
	await db.deleteFrom('home').where('id', '=', home).execute();
}
