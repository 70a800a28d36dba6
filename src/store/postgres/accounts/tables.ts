import { type ColumnType, type Kysely, type Migration, Migrator } from 'kysely';
import { SCHEMA } from '../apart.ts';

/** What a member of a home may do: everything; plan with it; look at it. */
export type Role = 'own' | 'plan' | 'look';

/** Who is kept here, and what is whose. Secrets are kept as their hashes; instants are ISO 8601. */
export type AccountTables = {
	person: {
		id: string;
		/** The name shown, and, in lower case, the one that signs in. */
		name: string;
		name_key: string;
		/** Hash with its own salt and parameters, or null: a passkey alone. */
		password: string | null;
		/** 1 = lets people in and puts them out. */
		is_host: number;
		created_at: string;
	};
	home: { id: string; name: string; created_at: string };
	membership: { home: string; person: string; role: Role; since: string };
	invitation: {
		token_hash: string;
		/** The home that it lets into, or null: a home of one's own. */
		home: string | null;
		role: Role | null;
		is_host: number;
		expires_at: string;
	};
	session: {
		id: string;
		person: string;
		token_hash: string;
		/** The token before the last change, good for a moment more. */
		previous_hash: string | null;
		changed_at: string;
		device: string;
		signed_in_at: string;
		seen_at: string;
	};
	passkey: {
		/** As the authenticator gave it, base64url. */
		id: string;
		person: string;
		public_key: Buffer;
		/** Of 32 bits, unsigned; read as text. */
		counter: ColumnType<string, number, number>;
		transports: string;
		device: string;
		added_at: string;
	};
	/** What a browser was asked to sign, and for what and by whom: `sign-in`, or who a new passkey is for. */
	challenge: { id: string; challenge: string; expires_at: string; asked_of: string };
	/** Tries to sign in by name and by address, since a moment. */
	tries: { key: string; count: number; since: string };
};

/** The tables of the accounts, as the query builder sees them. */
export type AccountsDatabase = Kysely<AccountTables>;

const idOf = (table: 'person' | 'home') => `${table}.id`;

/** People, homes, and who may come into which. */
async function addPeopleAndHomes({ schema }: Kysely<unknown>): Promise<void> {
	await schema
		.createTable('person')
		.addColumn('id', 'text', (column) => column.primaryKey())
		.addColumn('name', 'text', (column) => column.notNull())
		.addColumn('name_key', 'text', (column) => column.notNull().unique())
		.addColumn('password', 'text')
		.addColumn('is_host', 'integer', (column) => column.notNull())
		.addColumn('created_at', 'text', (column) => column.notNull())
		.execute();
	await schema
		.createTable('home')
		.addColumn('id', 'text', (column) => column.primaryKey())
		.addColumn('name', 'text', (column) => column.notNull())
		.addColumn('created_at', 'text', (column) => column.notNull())
		.execute();
	await schema
		.createTable('membership')
		.addColumn('home', 'text', (column) => column.notNull().references(idOf('home')).onDelete('cascade'))
		.addColumn('person', 'text', (column) => column.notNull().references(idOf('person')).onDelete('cascade'))
		.addColumn('role', 'text', (column) => column.notNull())
		.addColumn('since', 'text', (column) => column.notNull())
		.addPrimaryKeyConstraint('membership_key', ['person', 'home'])
		.execute();
	await schema.createIndex('membership_home').on('membership').column('home').execute();
	await schema
		.createTable('invitation')
		.addColumn('token_hash', 'text', (column) => column.primaryKey())
		.addColumn('home', 'text', (column) => column.references(idOf('home')).onDelete('cascade'))
		.addColumn('role', 'text')
		.addColumn('is_host', 'integer', (column) => column.notNull())
		.addColumn('expires_at', 'text', (column) => column.notNull())
		.execute();
}

/** How people are known again. */
async function addSigningIn({ schema }: Kysely<unknown>): Promise<void> {
	await schema
		.createTable('session')
		.addColumn('id', 'text', (column) => column.primaryKey())
		.addColumn('person', 'text', (column) => column.notNull().references(idOf('person')).onDelete('cascade'))
		.addColumn('token_hash', 'text', (column) => column.notNull().unique())
		.addColumn('previous_hash', 'text', (column) => column.unique())
		.addColumn('changed_at', 'text', (column) => column.notNull())
		.addColumn('device', 'text', (column) => column.notNull())
		.addColumn('signed_in_at', 'text', (column) => column.notNull())
		.addColumn('seen_at', 'text', (column) => column.notNull())
		.execute();
	await schema.createIndex('session_person').on('session').column('person').execute();
	await schema
		.createTable('passkey')
		.addColumn('id', 'text', (column) => column.primaryKey())
		.addColumn('person', 'text', (column) => column.notNull().references(idOf('person')).onDelete('cascade'))
		.addColumn('public_key', 'bytea', (column) => column.notNull())
		.addColumn('counter', 'integer', (column) => column.notNull())
		.addColumn('transports', 'text', (column) => column.notNull())
		.addColumn('device', 'text', (column) => column.notNull())
		.addColumn('added_at', 'text', (column) => column.notNull())
		.execute();
	await schema.createIndex('passkey_person').on('passkey').column('person').execute();
	await schema
		.createTable('challenge')
		.addColumn('id', 'text', (column) => column.primaryKey())
		.addColumn('challenge', 'text', (column) => column.notNull())
		.addColumn('expires_at', 'text', (column) => column.notNull())
		.execute();
	await schema
		.createTable('tries')
		.addColumn('key', 'text', (column) => column.primaryKey())
		.addColumn('count', 'integer', (column) => column.notNull())
		.addColumn('since', 'text', (column) => column.notNull())
		.execute();
}

const first: Migration = {
	async up(db: Kysely<unknown>) {
		await addPeopleAndHomes(db);
		await addSigningIn(db);
	},
};

/** A challenge is good for whom it was asked alone; a passkey's counter has 32 bits (W3C Web Authentication, section 6.1), one more than an integer here. */
const askedOf: Migration = {
	async up({ schema }: Kysely<unknown>) {
		await schema
			.alterTable('challenge')
			.addColumn('asked_of', 'text', (column) => column.notNull().defaultTo(''))
			.execute();
		await schema
			.alterTable('passkey')
			.alterColumn('counter', (column) => column.setDataType('bigint'))
			.execute();
	},
};

/** Every version of the accounts' tables in order; a new one is added at the end and never changed again. */
const MIGRATIONS: Readonly<Record<string, Migration>> = { '0001-first': first, '0002-asked-of': askedOf };

/** Brings the accounts' tables to the newest version, all or nothing, one process at a time. */
export async function migrateAccounts<T>(db: Kysely<T>): Promise<void> {
	const migrator = new Migrator({
		db,
		provider: { getMigrations: async () => ({ ...MIGRATIONS }) },
		migrationTableSchema: SCHEMA,
		migrationTableName: 'account_migration',
		migrationLockTableName: 'account_migration_lock',
	});
	const { error } = await migrator.migrateToLatest();
	if (error) throw error;
}
