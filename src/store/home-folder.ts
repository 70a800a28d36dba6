import { constants, type Stats } from 'node:fs';
import { access, lstat, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { say } from '../language/speak.ts';
import { makePrivateFolder } from './private-files.ts';
import { meaningOfSystemError } from './system-error.ts';

/** The place that should be a home cannot be one; nothing was changed. */
export class HomeFolderError extends Error {}

const refused = (path: string, what: string): HomeFolderError =>
	new HomeFolderError(say('home.noFolder', { path, what }));

const isMissing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT';

/** What the path leads to; null where there is nothing. */
async function foundAt(path: string, look: (path: string) => Promise<Stats>): Promise<Stats | null> {
	try {
		return await look(path);
	} catch (error) {
		if (isMissing(error)) return null;
		throw error;
	}
}

/** Whether a folder is there; false = nothing is. Throws {@link HomeFolderError} where something else is in its place. */
export async function isFolder(path: string): Promise<boolean> {
	const found = await foundAt(path, stat);
	if (found?.isDirectory()) return true;
	if (found) throw refused(path, say('home.isFile'));
	// Nothing else is a dead link: another program may make the folder between the two looks.
	if ((await foundAt(path, lstat))?.isSymbolicLink()) throw refused(path, say('home.isDeadLink'));
	return false;
}

/** Makes the folder of a home where it is missing, and sees that it can be written. Throws {@link HomeFolderError}. */
export async function makeHomeFolder(homePath: string): Promise<void> {
	const path = resolve(homePath);
	try {
		if (!(await isFolder(path))) await makePrivateFolder(path);
		await access(path, constants.R_OK | constants.W_OK | constants.X_OK);
	} catch (error) {
		const meaning = meaningOfSystemError(error);
		if (meaning === null) throw error;
		throw refused(path, isMissing(error) ? say('home.mayNotMake') : meaning);
	}
}

/** Sees that a home is there, without making one. Throws {@link HomeFolderError}. */
export async function requireHome(homePath: string, databaseFile: string): Promise<void> {
	const path = resolve(homePath);
	const found = await stat(join(path, databaseFile)).catch((error: unknown) => {
		if (meaningOfSystemError(error) === null) throw error;
		return null;
	});
	if (!found?.isFile()) throw new HomeFolderError(say('home.noneThere', { path }));
}

/** Where SQLite cannot open its file, or cannot write to it, that as a {@link HomeFolderError}; null for every other error. */
export const unopened = (error: unknown, path: string): HomeFolderError | null =>
	error instanceof Error && /unable to open database file|readonly database/i.test(error.message)
		? refused(path, say('home.notWritable'))
		: null;
