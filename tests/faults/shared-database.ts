import { join } from 'node:path';
import { directoryPhotoFiles } from '../../src/store/directory-photo-files.ts';
import { openDatabase } from '../../src/store/postgres/database.ts';
import { openHomeStore } from '../../src/store/postgres/home-store.ts';
import { sqlStore } from '../../src/store/sql-store.ts';
import { closeSqlite, openSqlite } from '../../src/store/sqlite/sqlite-database.ts';
import type { Store } from '../../src/store/store.ts';

/** The moment of every decision made in a shared database. */
export const SHARED_NOW = () => new Date('2026-03-01T08:00:00.000Z');

/** A database that several processes open: SQLite in a folder without the home's lock, or PostgreSQL. */
export type SharedDatabase =
	| { readonly kind: 'sqlite'; readonly folder: string }
	| { readonly kind: 'postgres'; readonly connectionString: string; readonly folder: string };

/** Opens the shared database as one process of several. */
export async function openShared(database: SharedDatabase): Promise<{ store: Store; close(): Promise<void> }> {
	const files = directoryPhotoFiles(database.folder);
	if (database.kind === 'postgres') {
		const { connectionString } = database;
		const hosted = await openDatabase({ connectionString, maxConnections: 2 });
		const { store } = await openHomeStore(hosted, 'home', files, SHARED_NOW);
		return { store, close: () => hosted.close() };
	}
	const { db, connection } = openSqlite(join(database.folder, 'shared.sqlite'));
	return { store: sqlStore(db, files, SHARED_NOW), close: async () => closeSqlite(connection) };
}
