import { Kysely, PostgresDialect, sql } from 'kysely';
import pg from 'pg';
import { migrateToNewest } from '../migrations/all.ts';
import type { Tables } from '../schema.ts';
import { type AccountsDatabase, type AccountTables, migrateAccounts } from './accounts/tables.ts';
import { aloneInDatabase } from './alone-in-database.ts';
import { keepHomesApart, SCHEMA, withinAllHomes } from './apart.ts';
import { connectionsOf, type ToldLast } from './told-connections.ts';

/** The database of all homes, as one process has it open. */
export type HostedDatabase = {
	readonly accounts: AccountsDatabase;
	/** The tables of all homes, through connections that see the rows of this home alone. */
	homeTables(homeId: string): Kysely<Tables>;
	/** Answers where the database can be asked. */
	ping(): Promise<void>;
	close(): Promise<void>;
};

/**
 * A role that the policies bind. Whoever may do everything in a database (its superuser) is bound by none, so that such a login steps down to
 * this role.
 */
const BOUND_ROLE = 'dyelot_bound';

/** Only one process at a time brings the tables up to date. */
const MIGRATING = 'dyelot migrations';

type Connecting = { readonly connectionString: string; readonly maxConnections?: number };

const poolOf = ({ connectionString, maxConnections = 10 }: Connecting, options: string) => {
	// An answered change is on disk, whatever the database's own default.
	const pool = new pg.Pool({
		connectionString,
		max: maxConnections,
		options: `-c search_path=${SCHEMA} -c synchronous_commit=on ${options}`,
	});
	// A connection that the database ends is told to whoever uses it by their next query, and replaced at the next use. Unheard, it would end the
	// process: while it lies in the pool, and between two queries of a transaction.
	pool.on('error', () => {});
	pool.on('connect', (client) => client.on('error', () => {}));
	return pool;
};

async function makeBoundRole(db: Kysely<Tables>): Promise<void> {
	const { rows } = await sql`select from pg_roles where rolname = ${BOUND_ROLE}`.execute(db);
	if (rows.length === 0) await sql`create role ${sql.ref(BOUND_ROLE)} nologin`.execute(db);
	const schema = sql.ref(SCHEMA);
	const role = sql.ref(BOUND_ROLE);
	await sql`grant usage on schema ${schema} to ${role}`.execute(db);
	await sql`grant select, insert, update, delete on all tables in schema ${schema} to ${role}`.execute(db);
	await sql`grant usage, select, update on all sequences in schema ${schema} to ${role}`.execute(db);
}

/** Brings all tables up to date; returns the role to step down to, or null where policies bind the login itself. */
const prepare = (connecting: Connecting): Promise<string | null> =>
	aloneInDatabase(connecting.connectionString, MIGRATING, async () => {
		const pool = poolOf({ ...connecting, maxConnections: 2 }, '');
		const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
		try {
			await migrateToNewest(db.withSchema(SCHEMA), { schema: SCHEMA });
			await migrateAccounts(db.withSchema(SCHEMA));
			await db.transaction().execute(keepHomesApart);
			const { rows } = await sql<{ free: boolean }>`select rolsuper or rolbypassrls as free from pg_roles
				where rolname = current_user`.execute(db);
			if (!rows[0]?.free) return null;
			await makeBoundRole(db);
			return BOUND_ROLE;
		} finally {
			await db.destroy();
		}
	});

/** Connects to the database and brings its tables up to date. Throws `NewerHomeError` where a later program made them. */
export async function openDatabase(connecting: Connecting): Promise<HostedDatabase> {
	const role = await prepare(connecting);
	const pool = poolOf(connecting, role === null ? '' : `-c role=${role}`);
	const toldLast: ToldLast = new WeakMap();
	const accounts = new Kysely<AccountTables>({ dialect: new PostgresDialect({ pool }) });
	return {
		accounts,
		homeTables: (homeId) =>
			new Kysely<Tables>({
				dialect: new PostgresDialect({ pool: connectionsOf(pool, homeId, toldLast) }),
				plugins: [withinAllHomes],
			}),
		async ping() {
			await sql`select 1`.execute(accounts);
		},
		close: () => accounts.destroy(),
	};
}
