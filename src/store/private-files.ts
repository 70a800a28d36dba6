import { chmod, type FileHandle, lstat, mkdir, open, readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { keptWords } from '../language/kept-sentence.ts';

/** Only the owner may look into a folder of a home, or read and write a file of it (POSIX; Windows keeps its own lists of rights). */
export const PRIVATE_FOLDER = 0o700;
export const PRIVATE_FILE = 0o600;

const RIGHTS = 0o777;
const hasModes = process.platform !== 'win32';

/** Makes one folder; false where it was there, or somebody else made it meanwhile. */
async function makeFolder(path: string): Promise<boolean> {
	try {
		await mkdir(path, { mode: PRIVATE_FOLDER });
		return true;
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'EEXIST' && (await stat(path)).isDirectory()) return false;
		throw error;
	}
}

/**
 * The folder and those above it that are missing, one by one: Node's own way of doing so (`recursive`) never comes back below a folder that takes
 * none, such as /proc (seen with Node 20.20). Returns the first one made.
 */
async function makeFolders(path: string): Promise<string | undefined> {
	try {
		return (await makeFolder(path)) ? path : undefined;
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code !== 'ENOENT' || dirname(path) === path) throw error;
		const above = await makeFolders(dirname(path));
		return (await makeFolder(path)) ? (above ?? path) : above;
	}
}

/**
 * Makes a folder, and those above it that are missing, for the owner alone (the XDG Base Directory Specification 0.8 asks the same of the folder
 * for data); returns the first one made, as `mkdir` does.
 */
export async function makePrivateFolder(path: string): Promise<string | undefined> {
	const firstMade = await makeFolders(path);
	// The process's umask can only take rights away, some of the owner's among them.
	if (firstMade !== undefined && hasModes)
		for (let made = path; made.length >= firstMade.length; made = dirname(made)) await chmod(made, PRIVATE_FOLDER);
	return firstMade;
}

/** Opens a new file that only the owner may read; fails where there is one of this name. */
export async function createPrivateFile(path: string): Promise<FileHandle> {
	const file = await open(path, 'wx', PRIVATE_FILE);
	if (hasModes) await file.chmod(PRIVATE_FILE);
	return file;
}

/** Makes sure that there is a file of this name, for the owner alone: whoever opens it next, SQLite too, keeps its rights. */
export async function ensurePrivateFile(path: string): Promise<void> {
	const file = await open(path, 'a', PRIVATE_FILE);
	try {
		if (hasModes) await file.chmod(PRIVATE_FILE);
	} finally {
		await file.close();
	}
}

async function isPrivate(path: string): Promise<boolean> {
	const { mode } = await lstat(path);
	return (mode & 0o077) === 0;
}

/** Takes the rights of everybody else from what lies in a folder, then from itself: where that was done, all below is done. */
async function closeBelow(folder: string): Promise<void> {
	for (const entry of await readdir(folder, { withFileTypes: true })) {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) await closeBelow(path);
		else if (entry.isFile() && ((await lstat(path)).mode & RIGHTS) !== PRIVATE_FILE) await chmod(path, PRIVATE_FILE);
	}
	await chmod(folder, PRIVATE_FOLDER);
}

/**
 * Closes a home that an earlier version left open to others on this computer. The folders themselves are closed last, so that a home whose
 * folders and `files` are closed needs no walk through thousands of photos. Returns a sentence where the disk keeps no rights (exFAT), null
 * otherwise.
 */
export async function closeToOthers(homePath: string, files: readonly string[]): Promise<string | null> {
	if (!hasModes) return null;
	const entries = await readdir(homePath, { withFileTypes: true });
	const folders = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
	const present = entries.map(({ name }) => name).filter((name) => files.includes(name));
	const told = [homePath, ...[...folders, ...present].map((name) => join(homePath, name))];
	const allClosed = async () => (await Promise.all(told.map(isPrivate))).every(Boolean);
	if (await allClosed()) return null;
	try {
		await closeBelow(homePath);
	} catch (error) {
		const { code } = error as NodeJS.ErrnoException;
		if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'EROFS') throw error;
	}
	if (await allClosed()) return null;
	return keptWords('home.notPrivate', { path: homePath });
}
