import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Kysely } from 'kysely';
import { say } from '../../language/speak.ts';
import { BadArchiveError } from '../../store/archive.ts';
import { copyRows, type PhotoOfHome, photosOfHome } from '../../store/copy-home.ts';
import { directoryPhotoFiles } from '../../store/directory-photo-files.ts';
import { INCOMING_FOLDER, receiveFile } from '../../store/incoming-file.ts';
import { DATABASE_FILE, DamagedHomeError } from '../../store/open-home.ts';
import { isPictureName, type PhotoFiles } from '../../store/photo-files.ts';
import { makePrivateFolder } from '../../store/private-files.ts';
import { restoreBackup } from '../../store/restore.ts';
import type { Tables } from '../../store/schema.ts';
import { closeSqlite, openSqlite } from '../../store/sqlite/sqlite-database.ts';
import { requireOwnForm } from '../../store/strangers-archive.ts';
import { UserError } from '../errors.ts';
import type { HostedHome } from './take-away.ts';

/** What the databases say of rows that are not of their form: SQLite, and PostgreSQL (manual, appendix A: classes 22 and 23). */
const ROWS_REFUSED = /^(ERR_SQLITE_ERROR$|22|23)/;

/** What an archive is refused for, in the words of whoever found it, without folders of this machine. */
function refusalOf(error: unknown, archive: string): unknown {
	const { code, message } = error as { code?: string; message: string };
	const isRefused = error instanceof BadArchiveError || error instanceof DamagedHomeError;
	if (!isRefused && !ROWS_REFUSED.test(code ?? '')) return error;
	const told = isRefused ? message : say('archives.cut', { archive, error: message });
	return new UserError('bad-request', told.replaceAll(/"?\/[^\s"]*\/([^\s"/;]+)"?/g, '"$1"'));
}

/** All photos that the archive names. Where its decisions cannot be read, or name what is no picture, it was altered. */
async function photosIn(db: Kysely<Tables>, archive: string): Promise<readonly PhotoOfHome[]> {
	const altered = (what: string) => new BadArchiveError(say('archives.otherInside', { archive, what }));
	const photos = await photosOfHome(db).catch((error: unknown) => {
		throw error instanceof TypeError || error instanceof SyntaxError ? altered('decisions') : error;
	});
	const odd = photos.flatMap(({ pictures }) => pictures).find((name) => !isPictureName(name));
	if (odd !== undefined) throw altered(String(odd).slice(0, 100));
	return photos;
}

/** Copies the files of photos from an unpacked home. What is missing there is passed over: its row says so by now. */
async function copyFiles(photos: readonly PhotoOfHome[], folder: string, to: PhotoFiles): Promise<void> {
	const from = directoryPhotoFiles(folder);
	for (const { id, pictures } of photos) {
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
		await restoreBackup(archivePath, folder, home.now, requireOwnForm);
		const { db, connection } = openSqlite(join(folder, DATABASE_FILE));
		try {
			await copyFiles(await photosIn(db, archivePath), folder, home.files);
			await db.transaction().execute((from) => home.tables.transaction().execute((into) => copyRows(from, into)));
		} finally {
			closeSqlite(connection);
		}
	} catch (error) {
		throw refusalOf(error, archivePath);
	} finally {
		await rm(work, { recursive: true, force: true });
	}
}
