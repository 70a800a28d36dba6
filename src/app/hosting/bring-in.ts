import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Kysely } from 'kysely';
import { BadArchiveError } from '../../store/archive.ts';
import { copyRows, photosOfHome } from '../../store/copy-home.ts';
import { directoryPhotoFiles } from '../../store/directory-photo-files.ts';
import { INCOMING_FOLDER, receiveFile } from '../../store/incoming-file.ts';
import { DATABASE_FILE, DamagedHomeError } from '../../store/open-home.ts';
import type { PhotoFiles } from '../../store/photo-files.ts';
import { makePrivateFolder } from '../../store/private-files.ts';
import { restoreBackup } from '../../store/restore.ts';
import type { Tables } from '../../store/schema.ts';
import { closeSqlite, openSqlite } from '../../store/sqlite/sqlite-database.ts';
import { UserError } from '../errors.ts';
import type { HostedHome } from './take-away.ts';

/** What an archive is refused for, in the words of whoever found it. */
const refusalOf = (error: unknown): unknown =>
	error instanceof BadArchiveError || error instanceof DamagedHomeError
		? new UserError('bad-request', error.message.replaceAll(/"?\/[^\s"]*\/([^\s"/;]+)"?/g, '"$1"'))
		: error;

/** Copies the files of all photos from an unpacked home. What is missing there is passed over: its row says so by now. */
async function copyFiles(db: Kysely<Tables>, folder: string, to: PhotoFiles): Promise<void> {
	const from = directoryPhotoFiles(folder);
	for (const { id, pictures } of await photosOfHome(db)) {
		const original = await from.openOriginal(id);
		// Through a file of its own, since taking one in may move it.
		if (original) await to.takeOriginal(id, await receiveFile(original.stream, join(folder, INCOMING_FOLDER)));
		for (const name of pictures) {
			const picture = await from.derived(id, name);
			if (picture) await to.writeDerived(id, name, picture);
		}
	}
}

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
			await copyFiles(db, folder, home.files);
			await db.transaction().execute((from) => home.tables.transaction().execute((into) => copyRows(from, into)));
		} finally {
			closeSqlite(connection);
		}
	} finally {
		await rm(work, { recursive: true, force: true });
	}
}
