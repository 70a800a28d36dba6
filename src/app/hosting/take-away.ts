import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Kysely } from 'kysely';
import { writeBackup } from '../../store/backup.ts';
import { copyFiles, copyRows } from '../../store/copy-home.ts';
import { directoryPhotoFiles } from '../../store/directory-photo-files.ts';
import { migrateToNewest } from '../../store/migrations/all.ts';
import { DATABASE_FILE } from '../../store/open-home.ts';
import type { PhotoFiles } from '../../store/photo-files.ts';
import { makePrivateFolder } from '../../store/private-files.ts';
import type { Tables } from '../../store/schema.ts';
import { closeSqlite, openSqlite } from '../../store/sqlite/sqlite-database.ts';

/** A home of many: its rows and its files. */
export type HostedHome = {
	readonly tables: Kysely<Tables>;
	readonly files: PhotoFiles;
	/** Folder of this machine with room for the whole home. */
	readonly workFolder: string;
};

/**
 * Writes the home as the one archive that the single form restores: as it is at one moment, put together in a folder of this machine and then
 * packed as there. Photos that come in meanwhile belong to the next one.
 */
export async function takeAway(home: HostedHome, to: NodeJS.WritableStream): Promise<void> {
	await makePrivateFolder(home.workFolder);
	const folder = await mkdtemp(join(home.workFolder, 'take-away-'));
	try {
		const { db, connection } = openSqlite(join(folder, DATABASE_FILE));
		try {
			await migrateToNewest(db);
			await home.tables
				.transaction()
				.setIsolationLevel('repeatable read')
				.setAccessMode('read only')
				.execute((from) => db.transaction().execute((into) => copyRows(from, into)));
			await copyFiles(db, home.files, directoryPhotoFiles(folder));
		} finally {
			closeSqlite(connection);
		}
		await writeBackup(folder, to);
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}
