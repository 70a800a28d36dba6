import { open, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { keptWords } from '../language/kept-sentence.ts';
import { moveDurably, PART_ENDING } from './durable-write.ts';
import { ensurePrivateFile, makePrivateFolder } from './private-files.ts';
import { copyDatabase } from './sqlite/copy-database.ts';

/** Folder of a home for its database as it was before a newer program changed its form. */
export const BEFORE_UPDATE = 'before-update';

/**
 * Keeps a copy of the database of a home that an earlier program made, before this one brings it up to date: photos and their files are not
 * changed by that. It is on disk when this resolves. `newest` names the newest form that the database has. Returns a sentence for the user.
 */
export async function keepBeforeUpdate(homePath: string, databaseFile: string, newest: string): Promise<string> {
	const name = `${newest}.sqlite`;
	const folder = join(homePath, BEFORE_UPDATE);
	const part = join(folder, name + PART_ENDING);
	await makePrivateFolder(folder);
	await rm(part, { force: true });
	await ensurePrivateFile(part);
	await copyDatabase(join(homePath, databaseFile), part);
	const file = await open(part, 'r+');
	await file.sync();
	await file.close();
	await moveDurably(part, join(folder, name));
	return keptWords('home.keptBeforeUpdate', { place: `${BEFORE_UPDATE}/${name}`, database: databaseFile });
}
