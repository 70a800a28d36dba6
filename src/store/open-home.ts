import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { say } from '../language/speak.ts';
import { keepBeforeUpdate } from './before-update.ts';
import { emptyOldBin } from './bin.ts';
import { checkHome } from './check-home.ts';
import { directoryPhotoFiles } from './directory-photo-files.ts';
import { makeHomeFolder, unopened } from './home-folder.ts';
import { LOCK_FILE, lockHome } from './home-lock.ts';
import { isOlderHome, migrateToNewest, newerHome } from './migrations/all.ts';
import { closeToOthers, ensurePrivateFile } from './private-files.ts';
import { sqlStore } from './sql-store.ts';
import { closeSqlite, openSqlite, type SqliteDatabase } from './sqlite/sqlite-database.ts';
import type { Store } from './store.ts';

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

const damaged = (path: string, what: string): DamagedHomeError =>
	new DamagedHomeError(say('home.damaged', { path, what }));

/** SQLite's own words for a file that is no database or no longer whole. */
const speaksOfDamage = (error: unknown): error is Error =>
	error instanceof Error && /malformed|not a database|disk I\/O error|corrupt/i.test(error.message);

/** Throws `DamagedHomeError` where a page of the database is not what it should be. */
export function checkDatabase(connection: SqliteDatabase['connection'], path: string): void {
	const complaints = connection.prepare('PRAGMA quick_check(3)').all() as { quick_check: string }[];
	if (complaints[0]?.quick_check === 'ok') return;
	throw damaged(path, complaints.map(({ quick_check }) => quick_check).join('; '));
}

/** Migrations that the database has, oldest first. Throws where a later program has changed the schema. */
function appliedMigrations(connection: SqliteDatabase['connection']): readonly string[] {
	const tables = connection.prepare("SELECT name FROM sqlite_master WHERE name = 'kysely_migration'").all();
	if (tables.length === 0) return [];
	const rows = connection.prepare('SELECT name FROM kysely_migration ORDER BY name').all() as { name: string }[];
	const applied = rows.map(({ name }) => name);
	const newer = newerHome(applied);
	if (newer) throw newer;
	return applied;
}

/** Opens a home, making it where there is none; brings its schema up to date; looks for damage. */
export async function openHome(homePath: string, { now }: { readonly now: () => Date }): Promise<OpenHome> {
	await makeHomeFolder(homePath);
	const openToOthers = await closeToOthers(homePath, [DATABASE_FILE, LOCK_FILE]);
	const path = join(homePath, DATABASE_FILE);
	let unlock = () => {};
	let database: SqliteDatabase | null = null;
	let applied: readonly string[] = [];
	try {
		await ensurePrivateFile(join(homePath, LOCK_FILE));
		unlock = lockHome(homePath);
		const isNew = !existsSync(path);
		// SQLite gives its log beside the database the database's own rights (findCreateFileMode in its os_unix.c; from memory).
		if (isNew) await ensurePrivateFile(path);
		database = openSqlite(path, (connection) => {
			checkDatabase(connection, path);
			applied = appliedMigrations(connection);
		});
		const { db } = database;
		const findings = openToOthers === null ? [] : [openToOthers];
		if (isOlderHome(applied)) findings.push(await keepBeforeUpdate(homePath, DATABASE_FILE, applied.at(-1)!));
		await migrateToNewest(db);
		if (!isNew) findings.push(...(await checkHome(homePath, db, now)));
		await emptyOldBin(db, now());
		const store = sqlStore(db, directoryPhotoFiles(homePath), now);
		return {
			store,
			database,
			findings,
			close: async () => {
				try {
					await store.close();
				} finally {
					unlock();
				}
			},
		};
	} catch (error) {
		// Through the connection: the query builder closes only what it has used.
		if (database) closeSqlite(database.connection);
		unlock();
		throw unopened(error, homePath) ?? (speaksOfDamage(error) ? damaged(path, error.message) : error);
	}
}
