import { constants } from 'node:fs';
import { type FileHandle, open, rm } from 'node:fs/promises';
import { say } from '../../language/speak.ts';
import { writeBackup } from '../../store/backup.ts';
import { requireHome } from '../../store/home-folder.ts';
import { DATABASE_FILE, openHome } from '../../store/open-home.ts';
import { defaultHomePath } from '../../store/paths.ts';
import { PRIVATE_FILE } from '../../store/private-files.ts';
import { meaningOfSystemError } from '../../store/system-error.ts';
import { parsedWords } from '../parsed-words.ts';

/** The new file, opened for writing; whatever is there already is never written over. */
async function newFile(path: string): Promise<FileHandle> {
	try {
		return await open(path, constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL, PRIVATE_FILE);
	} catch (error) {
		const meaning = meaningOfSystemError(error);
		throw meaning === null ? error : new Error(say('cli.noBackupFile', { path, meaning }));
	}
}

/** `dyelot backup FILE`: everything kept, in one archive; a cut one is taken away again. */
export async function backupCommand(words: readonly string[]): Promise<number> {
	const { values, rest } = parsedWords('backup', words);
	const file = rest[0]!;
	const homePath = values.home ?? defaultHomePath();
	await requireHome(homePath, DATABASE_FILE);
	const home = await openHome(homePath, { now: () => new Date() });
	let spoilt: readonly string[];
	try {
		const handle = await newFile(file);
		try {
			spoilt = await writeBackup(homePath, handle.createWriteStream());
		} catch (error) {
			await rm(file, { force: true });
			throw error;
		}
	} finally {
		await home.close();
	}
	for (const path of spoilt) console.error(say('refusals.changedOnDisk', { path }));
	console.log(
		values.json
			? JSON.stringify({ home: homePath, archive: file, spoilt })
			: say('cli.backedUp', { home: homePath, file }),
	);
	return 0;
}
