import { DatabaseSync } from '@photostructure/sqlite';
import { Kysely, SqliteAdapter, SqliteDialect } from 'kysely';
import type { Tables } from '../schema.ts';

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

/** SQLite undoes changes of tables like any other change; the query builder must know it, or a migration stopped halfway would stay so. */
class TransactionalSqliteAdapter extends SqliteAdapter {
	override get supportsTransactionalDdl(): boolean {
		return true;
	}
}

class TransactionalSqliteDialect extends SqliteDialect {
	override createAdapter(): SqliteAdapter {
		return new TransactionalSqliteAdapter();
	}
}

/** Opens the file so that an answered change is on disk: write-ahead log, synchronous FULL. */
export function openSqlite(path: string): SqliteDatabase {
	const connection = new DatabaseSync(path);
	try {
		connection.exec(
			'PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA busy_timeout = 5000;',
		);
	} catch (error) {
		connection.close();
		throw error;
	}
	const database = { close: () => connection.close(), prepare: (sql: string) => dialectStatement(connection, sql) };
	return { db: new Kysely<Tables>({ dialect: new TransactionalSqliteDialect({ database }) }), connection };
}
