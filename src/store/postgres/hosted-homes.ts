import { createHash } from 'node:crypto';
import { Kysely, PostgresDialect, sql, type Transaction } from 'kysely';
import pg from 'pg';
import { emptyOldBin } from '../bin.ts';
import { setMisshapenAside } from '../check-rows.ts';
import { migrateToNewest } from '../migrations/all.ts';
import type { PhotoFiles } from '../photo-files.ts';
import type { Tables } from '../schema.ts';
import { sqlStore } from '../sql-store.ts';
import type { Store } from '../store.ts';

/** One home of a person; somebody who plans for several people keeps several. */
export type HostedHome = { readonly id: string; readonly name: string; readonly createdAt: string };

/** No home of this person has this id: it may be somebody else's, which is not told. */
export class NotYourHomeError extends Error {}

type AccountTables = { homes: { id: string; owner: string; name: string; created_at: string } };

/**
 * Homes of many people in one PostgreSQL database. Each home has a schema of its own, so that no query can reach another's tables by
 * forgetting a condition; which home is whose stands in one table, asked before any schema is named.
 */
export type HostedHomes = {
	/** The person's homes, oldest first. */
	homesOf(owner: string): Promise<HostedHome[]>;
	createHome(owner: string, home: HostedHome): Promise<void>;
	/** Opens one of the person's homes. Throws `NotYourHomeError` for any other. Closing the store leaves the shared connections open. */
	open(owner: string, homeId: string): Promise<Store>;
	close(): Promise<void>;
};

/** Schema for the table of accounts. */
const ACCOUNTS = 'dyelot';

/** A schema's name for a home: a hash, so that any id is safe in it and PostgreSQL's limit of 63 characters holds. */
export const schemaOf = (homeId: string): string =>
	`home_${createHash('sha256').update(homeId).digest('hex').slice(0, 40)}`;

async function prepareAccounts(db: Kysely<AccountTables>): Promise<void> {
	await db.transaction().execute(async (trx) => {
		// Several servers may start at once; "if not exists" alone does not keep two from creating at the same moment.
		await sql`select pg_advisory_xact_lock(hashtextextended(${ACCOUNTS}, 0))`.execute(trx);
		await trx.schema.createSchema(ACCOUNTS).ifNotExists().execute();
		await trx.schema
			.withSchema(ACCOUNTS)
			.createTable('homes')
			.ifNotExists()
			.addColumn('id', 'text', (column) => column.primaryKey())
			.addColumn('owner', 'text', (column) => column.notNull())
			.addColumn('name', 'text', (column) => column.notNull())
			.addColumn('created_at', 'text', (column) => column.notNull())
			.execute();
		await trx.schema
			.withSchema(ACCOUNTS)
			.createIndex('homes_owner')
			.ifNotExists()
			.on('homes')
			.column('owner')
			.execute();
	});
}

async function openStore(db: Kysely<Tables>, homeId: string, files: PhotoFiles, now: () => Date): Promise<Store> {
	const schema = schemaOf(homeId);
	const own = db.withSchema(schema);
	await migrateToNewest(own, { schema });
	const takeTurn = async (trx: Transaction<Tables>) => {
		await sql`select pg_advisory_xact_lock(hashtextextended(${schema}, 0))`.execute(trx);
	};
	await emptyOldBin(own, now());
	await setMisshapenAside(own, now().toISOString());
	return { ...sqlStore(own, files, now, takeTurn), close: async () => {} };
}

/** Connects to the database; `filesOf` gives the place of a home's photo files. */
export async function openHostedHomes(settings: {
	readonly connectionString: string;
	readonly filesOf: (homeId: string) => PhotoFiles;
	readonly now: () => Date;
	/** Connections that this process keeps at most. */
	readonly maxConnections?: number;
}): Promise<HostedHomes> {
	const pool = new pg.Pool({
		connectionString: settings.connectionString,
		max: settings.maxConnections ?? 10,
		// An answered change is on disk, whatever the database's own default.
		options: '-c synchronous_commit=on',
	});
	// A connection that the database ends while nobody uses it is replaced at the next use; unheard, it would end the process.
	pool.on('error', () => {});
	const db = new Kysely<AccountTables & Tables>({ dialect: new PostgresDialect({ pool }) });
	const accounts = (db as unknown as Kysely<AccountTables>).withSchema(ACCOUNTS);
	await prepareAccounts(db as unknown as Kysely<AccountTables>);
	return {
		async homesOf(owner) {
			const rows = await accounts
				.selectFrom('homes')
				.select(['id', 'name', 'created_at'])
				.where('owner', '=', owner)
				.orderBy('created_at')
				.orderBy('id')
				.execute();
			return rows.map(({ id, name, created_at }) => ({ id, name, createdAt: created_at }));
		},
		async createHome(owner, { id, name, createdAt }) {
			await accounts.insertInto('homes').values({ id, owner, name, created_at: createdAt }).execute();
		},
		async open(owner, homeId) {
			const home = await accounts
				.selectFrom('homes')
				.select('id')
				.where('id', '=', homeId)
				.where('owner', '=', owner)
				.executeTakeFirst();
			if (!home) throw new NotYourHomeError(`Expected one of your own homes; "${homeId.slice(0, 80)}" is none.`);
			return openStore(db as unknown as Kysely<Tables>, homeId, settings.filesOf(homeId), settings.now);
		},
		close: () => db.destroy(),
	};
}
