import { setTimeout as pause } from 'node:timers/promises';
import { DatabaseSync } from '@photostructure/sqlite';
import {
	CompiledQuery,
	type DatabaseConnection,
	Kysely,
	SqliteAdapter,
	SqliteDialect,
	type SqliteDialectConfig,
	SqliteDriver,
} from 'kysely';
import type { Tables } from '../schema.ts';
import { patientConnection } from './patient-connection.ts';

type Connection = InstanceType<typeof DatabaseSync>;

/** An opened database file: the query builder over it, and the connection below for what only SQLite has. */
export type SqliteDatabase = { readonly db: Kysely<Tables>; readonly connection: Connection };

/** The part of a prepared statement that the query builder's dialect asks for. */
function dialectStatement(connection: Connection, sql: string) {
	const statement = connection.prepare(sql);
	type Values = Parameters<typeof statement.all>;
	return {
		reader: statement.columns().length > 0,
		all: (values: readonly unknown[]) => statement.all(...(values as Values)),
		run: (values: readonly unknown[]) =>
			statement.run(...(values as Values)) as { changes: number | bigint; lastInsertRowid: number | bigint },
		iterate: (values: readonly unknown[]) => statement.iterate(...(values as Values)) as IterableIterator<unknown>,
	};
}

/**
 * Merges the write-ahead log into the database and closes it. Closing alone would not: statements wait for the garbage collector, and as
 * long as one is left SQLite keeps the file and its log in use. Where merging cannot be done (a full disk, a backup that still reads) nothing
 * is lost: the log stays beside the database and is merged at the next opening.
 */
export function closeSqlite(connection: Connection): void {
	if (!connection.isOpen) return;
	try {
		connection.exec('PRAGMA journal_mode = DELETE');
	} catch {
		// It cannot be merged now (a full disk, a backup that still reads). Nothing is lost: the log stays beside the database and is merged
		// at the next opening.
	}
	connection.close();
}

/** SQLite undoes changes of tables like any other change; the query builder must know it, or a migration stopped halfway would stay so. */
class TransactionalSqliteAdapter extends SqliteAdapter {
	override get supportsTransactionalDdl(): boolean {
		return true;
	}
}

/**
 * SQLite ends a transaction by itself where the disk is full or fails (sqlite.org/lang_transaction.html, "Response To Errors Within A
 * Transaction"). Rolling it back once more would only put its own complaint in place of the true cause.
 */
class OwnRollbackSqliteDriver extends SqliteDriver {
	readonly #sqlite: Connection;

	constructor(config: SqliteDialectConfig, sqlite: Connection) {
		super(config);
		this.#sqlite = sqlite;
	}

	/** Waits, without stopping everything else, where another program or thread is writing. */
	override async acquireConnection(): Promise<DatabaseConnection> {
		return patientConnection(await super.acquireConnection(), {
			isInTransaction: () => this.#sqlite.isTransaction,
			letOthersIn: async (ms) => {
				await super.releaseConnection();
				await pause(ms);
				await super.acquireConnection();
			},
		});
	}

	/**
	 * Takes the right to write at once: a transaction that read first and asks for it later is refused where another program wrote between
	 * (sqlite.org/rescode.html, SQLITE_BUSY_SNAPSHOT).
	 */
	override async beginTransaction(connection: DatabaseConnection): Promise<void> {
		await connection.executeQuery(CompiledQuery.raw('begin immediate'));
	}

	override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
		if (this.#sqlite.isTransaction) await super.rollbackTransaction(connection);
	}
}

class OwnSqliteDialect extends SqliteDialect {
	readonly #config: SqliteDialectConfig;
	readonly #sqlite: Connection;

	constructor(config: SqliteDialectConfig, sqlite: Connection) {
		super(config);
		this.#config = config;
		this.#sqlite = sqlite;
	}

	override createAdapter(): SqliteAdapter {
		return new TransactionalSqliteAdapter();
	}

	override createDriver(): SqliteDriver {
		return new OwnRollbackSqliteDriver(this.#config, this.#sqlite);
	}
}

/**
 * Opens the file so that an answered change is on disk: write-ahead log, synchronous FULL. `check` looks at it first, before anything in it is
 * changed, and may throw.
 */
export function openSqlite(path: string, check: (connection: Connection) => void = () => {}): SqliteDatabase {
	const connection = new DatabaseSync(path);
	try {
		connection.exec('PRAGMA busy_timeout = 5000;');
		check(connection);
		connection.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;');
		// From here on it is `patientConnection` that waits.
		connection.exec('PRAGMA busy_timeout = 0;');
	} catch (error) {
		connection.close();
		throw error;
	}
	const database = {
		close: () => closeSqlite(connection),
		prepare: (sql: string) => dialectStatement(connection, sql),
	};
	return { db: new Kysely<Tables>({ dialect: new OwnSqliteDialect({ database }, connection) }), connection };
}
