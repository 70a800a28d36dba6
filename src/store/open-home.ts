import { existsSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { checkHome } from './check-home.ts';
import { lockHome } from './home-lock.ts';
import { migrateToNewest } from './migrations/all.ts';
import { directoryPhotoFiles } from './photo-files.ts';
import { sqlStore } from './sql-store.ts';
import { openSqlite, type SqliteDatabase } from './sqlite/sqlite-database.ts';
import type { Store } from './store.ts';
import { thingsIn } from './things.ts';

/** A home that is open: nobody else may open it until it is closed. */
export type OpenHome = {
	readonly store: Store;
	readonly database: SqliteDatabase;
	/** What start-up found amiss and what it did, one sentence each; empty when all is well. */
	readonly findings: readonly string[];
	close(): Promise<void>;
};

/** Name of the database file in a home. */
export const DATABASE_FILE = 'dyelot.sqlite';

/** The home is damaged in a way that must not be made worse by going on. */
export class DamagedHomeError extends Error {}

function openDatabase(path: string): SqliteDatabase {
	const database = openSqlite(path);
	const [check] = database.connection.prepare('PRAGMA quick_check(1)').all() as { quick_check: string }[];
	if (check?.quick_check !== 'ok') {
		database.connection.close();
		throw new DamagedHomeError(
			`Expected a whole database in ${path}; it is damaged (${check?.quick_check}). Nothing was changed. Restore your last backup into a new folder with "dyelot restore".`,
		);
	}
	return database;
}

/** Opens a home, making it where there is none; brings its schema up to date; looks for damage. */
export async function openHome(homePath: string, { now }: { readonly now: () => Date }): Promise<OpenHome> {
	await mkdir(homePath, { recursive: true });
	const unlock = lockHome(homePath);
	try {
		const path = join(homePath, DATABASE_FILE);
		const isNew = !existsSync(path);
		const database = openDatabase(path);
		try {
			await migrateToNewest(database.db);
			const findings = isNew ? [] : await checkHome(homePath, database.db);
			await thingsIn(database.db, now).emptyOldBin();
			const store = sqlStore(database.db, directoryPhotoFiles(homePath), now);
			return {
				store,
				database,
				findings,
				close: async () => {
					await store.close();
					unlock();
				},
			};
		} catch (error) {
			await database.db.destroy();
			throw error;
		}
	} catch (error) {
		unlock();
		throw databaseError(error, homePath);
	}
}

/** SQLite's own words for a file that is no database, in ours. */
function databaseError(error: unknown, homePath: string): unknown {
	if (error instanceof Error && /malformed|not a database/.test(error.message)) {
		return new DamagedHomeError(
			`Expected a whole database in ${homePath}; it is damaged (${error.message}). Nothing was changed. Restore your last backup into a new folder with "dyelot restore".`,
		);
	}
	return error;
}
