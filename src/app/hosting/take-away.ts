import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import type { Kysely } from 'kysely';
import { type ArchiveEntry, packArchive } from '../../store/backup.ts';
import { copyRows, type PhotoOfHome, photosOfHome } from '../../store/copy-home.ts';
import { migrateToNewest } from '../../store/migrations/all.ts';
import { openFile } from '../../store/open-file.ts';
import { DATABASE_FILE } from '../../store/open-home.ts';
import { derivedKey, originalKey, type PhotoFiles } from '../../store/photo-files.ts';
import { makePrivateFolder } from '../../store/private-files.ts';
import type { Tables } from '../../store/schema.ts';
import { copyDatabase } from '../../store/sqlite/copy-database.ts';
import { closeSqlite, openSqlite } from '../../store/sqlite/sqlite-database.ts';

/** A home of many: its rows and its files. */
export type HostedHome = {
	readonly tables: Kysely<Tables>;
	readonly files: PhotoFiles;
	/** Folder of this machine with room for the rows of the home. */
	readonly workFolder: string;
};

/** Writes the rows of the home, as they are at one moment, into a database of the single form; returns the photos in it. */
async function copyTables(tables: Kysely<Tables>, path: string): Promise<PhotoOfHome[]> {
	const { db, connection } = openSqlite(path);
	try {
		await migrateToNewest(db);
		await tables
			.transaction()
			.setIsolationLevel('repeatable read')
			.setAccessMode('read only')
			.execute((from) => db.transaction().execute((into) => copyRows(from, into)));
		return await photosOfHome(db);
	} finally {
		closeSqlite(connection);
	}
}

async function* entriesOf({ tables, files, workFolder }: HostedHome): AsyncGenerator<ArchiveEntry> {
	await makePrivateFolder(workFolder);
	const folder = await mkdtemp(join(workFolder, 'take-away-'));
	try {
		const copied = join(folder, 'copied.sqlite');
		const photos = await copyTables(tables, copied);
		const snapshot = join(folder, DATABASE_FILE);
		await copyDatabase(copied, snapshot);
		yield { path: DATABASE_FILE, open: () => openFile(snapshot) };
		for (const { id, pictures } of photos) {
			yield { path: originalKey(id), open: () => files.openOriginal(id) };
			for (const name of pictures)
				yield {
					path: derivedKey(id, name),
					open: async () => {
						const bytes = await files.derived(id, name);
						return bytes && { sizeBytes: bytes.length, stream: Readable.from([bytes]) };
					},
				};
		}
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

/**
 * Writes the home as the one archive that the single form restores: as it is at one moment. Photos go from where they are kept straight into
 * it, no faster than it is taken; those that come in meanwhile belong to the next one. A photo whose file is missing is told of when it is restored.
 */
export async function takeAway(home: HostedHome, to: NodeJS.WritableStream): Promise<void> {
	await packArchive(entriesOf(home), to);
}
