import { join } from 'node:path';
import { directoryPhotoFiles } from './directory-photo-files.ts';
import { DATABASE_FILE } from './open-home.ts';
import { sqlStore } from './sql-store.ts';
import { openSqlite } from './sqlite/sqlite-database.ts';
import type { Store } from './store.ts';

/** A further connection to a home that this program has open, for a thread of its own. Its decisions and the program's wait for each other. */
export function openBeside(homePath: string, now: () => Date): Store {
	return sqlStore(openSqlite(join(homePath, DATABASE_FILE)).db, directoryPhotoFiles(homePath), now);
}
