import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { BadArchiveError } from '../../store/archive.ts';
import { copyFiles, copyRows } from '../../store/copy-home.ts';
import { directoryPhotoFiles } from '../../store/directory-photo-files.ts';
import { DATABASE_FILE, DamagedHomeError } from '../../store/open-home.ts';
import { makePrivateFolder } from '../../store/private-files.ts';
import { restoreBackup } from '../../store/restore.ts';
import { closeSqlite, openSqlite } from '../../store/sqlite/sqlite-database.ts';
import { UserError } from '../errors.ts';
import type { HostedHome } from './take-away.ts';

/** What an archive is refused for, in the words of whoever found it. */
const refusalOf = (error: unknown): unknown =>
	error instanceof BadArchiveError || error instanceof DamagedHomeError
		? new UserError('bad-request', error.message.replaceAll(/"?\/[^\s"]*\/([^\s"/;]+)"?/g, '"$1"'))
		: error;

/**
 * Fills an empty home with what an archive of the single form, or of another host, holds. It is unpacked in a folder of this machine and checked
 * as there, files first and rows last: a home that breaks off holds no rows. Throws `UserError` where the archive is none.
 */
export async function bringIn(archivePath: string, home: HostedHome & { readonly now: () => Date }): Promise<void> {
	await makePrivateFolder(home.workFolder);
	const work = await mkdtemp(join(home.workFolder, 'bring-in-'));
	try {
		const folder = join(work, 'home');
		await restoreBackup(archivePath, folder, home.now).catch((error: unknown) => {
			throw refusalOf(error);
		});
		const { db, connection } = openSqlite(join(folder, DATABASE_FILE));
		try {
			await copyFiles(db, directoryPhotoFiles(folder), home.files);
			await db.transaction().execute((from) => home.tables.transaction().execute((into) => copyRows(from, into)));
		} finally {
			closeSqlite(connection);
		}
	} finally {
		await rm(work, { recursive: true, force: true });
	}
}
