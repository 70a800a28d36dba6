import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { mkdtemp, open, readdir, rename, rm, rmdir, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { DatabaseSync } from '@photostructure/sqlite';
import tar from 'tar-stream';
import { say } from '../language/speak.ts';
import { ARCHIVE_CHECKSUMS, ARCHIVE_FORMAT, ARCHIVE_HEAD, type ArchivedFile, BadArchiveError } from './archive.ts';
import { FOUND_FOLDER } from './check-photo-files.ts';
import { syncFolder } from './durable-write.ts';
import { isFolder, makeHomeFolder } from './home-folder.ts';
import { newerHome } from './migrations/all.ts';
import { checkDatabase, DATABASE_FILE, openHome } from './open-home.ts';
import { PHOTO_KEY } from './photo-files.ts';
import { makePrivateFolder, PRIVATE_FILE } from './private-files.ts';
import { meaningOfSystemError } from './system-error.ts';

const FOUND_KEY = new RegExp(`^${FOUND_FOLDER}/[^/\\\\]+$`);

/** A path inside a home that an archive may write: no way up, no absolute path. */
const isInside = (path: string): boolean =>
	path === DATABASE_FILE || PHOTO_KEY.test(path) || (FOUND_KEY.test(path) && !/^\.\.?$/.test(basename(path)));

/** More than the checksums of a million files, far less than the memory. */
const MAX_TEXT_BYTES = 256 * 1024 * 1024;

async function readText(stream: AsyncIterable<unknown>, archive: string): Promise<string> {
	const chunks: Buffer[] = [];
	let sizeBytes = 0;
	for await (const chunk of stream as AsyncIterable<Buffer>) {
		sizeBytes += chunk.length;
		if (sizeBytes > MAX_TEXT_BYTES) throw new BadArchiveError(say('archives.noEnd', { archive }));
		chunks.push(chunk);
	}
	return Buffer.concat(chunks).toString('utf8');
}

function parsed(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return null;
	}
}

const isArchivedFile = (one: unknown): one is ArchivedFile => {
	const { path, sha256 } = (one ?? {}) as Partial<ArchivedFile>;
	return typeof path === 'string' && typeof sha256 === 'string';
};

function requireHead(name: string, text: string, archive: string): void {
	const { format, version } = (parsed(text) ?? {}) as Partial<Record<keyof typeof ARCHIVE_FORMAT, unknown>>;
	if (name !== ARCHIVE_HEAD || format !== ARCHIVE_FORMAT.format)
		throw new BadArchiveError(say('archives.notOurs', { archive }));
	if (version !== ARCHIVE_FORMAT.version)
		throw new BadArchiveError(
			say('archives.otherForm', { known: ARCHIVE_FORMAT.version, archive, form: String(version) }),
		);
}

/** Writes one file and waits until it is on disk; returns its SHA-256. */
async function writeEntry(entry: AsyncIterable<unknown>, path: string): Promise<string> {
	await makePrivateFolder(dirname(path));
	const hash = createHash('sha256');
	await pipeline(
		async function* () {
			for await (const chunk of entry as AsyncIterable<Buffer>) {
				hash.update(chunk);
				yield chunk;
			}
		},
		createWriteStream(path, { flags: 'wx', mode: PRIVATE_FILE }),
	);
	const file = await open(path, 'r+');
	await file.sync();
	await file.close();
	return hash.digest('hex');
}

/** Unpacks every entry below `folder`; returns the checksums found and those the archive states. */
async function unpackEntries(archive: string, folder: string) {
	const extract = tar.extract();
	const found = new Map<string, string>();
	let headSeen = false;
	let stated: unknown = null;
	const consume = async () => {
		for await (const entry of extract) {
			const { name, type } = entry.header;
			if (!headSeen) {
				requireHead(name, await readText(entry, archive), archive);
				headSeen = true;
			} else if (name === ARCHIVE_CHECKSUMS) stated = parsed(await readText(entry, archive));
			else if (type === 'file' && isInside(name)) found.set(name, await writeEntry(entry, join(folder, name)));
			else throw new BadArchiveError(say('archives.otherFiles', { archive, name }));
		}
	};
	await Promise.all([pipeline(createReadStream(archive), extract), consume()]);
	return { found, stated };
}

/** An archive of a later program holds what this one would not understand. */
function refuseLater(connection: InstanceType<typeof DatabaseSync>, archive: string): void {
	const applied = connection.prepare('SELECT name FROM kysely_migration').all() as { name: string }[];
	if (newerHome(applied.map(({ name }) => name))) throw new BadArchiveError(say('archives.later', { archive }));
}

/** What is restored: the number of files, and what was found amiss in them and put right, one sentence each. */
export type Restored = { readonly files: number; readonly findings: readonly string[] };

/** Looks into the database of an archive: its size in bytes, and where it came from. Throws `BadArchiveError`. */
type LookingInto = (database: InstanceType<typeof DatabaseSync>, sizeBytes: number, archive: string) => Promise<void>;

/** Unpacks into `folder` and checks every file, and the database's own pages. Returns the number of files. */
async function unpack(archive: string, folder: string, lookInto: LookingInto): Promise<number> {
	const { found, stated } = await unpackEntries(archive, folder).catch((error: unknown) => {
		// Room on the disk and rights to write are no fault of the archive.
		const code = (error as NodeJS.ErrnoException).code;
		if (error instanceof BadArchiveError || (code !== undefined && /^E[A-Z]+$/.test(code))) throw error;
		throw new BadArchiveError(say('archives.cut', { archive, error: (error as Error).message }));
	});
	if (!Array.isArray(stated) || !stated.every(isArchivedFile))
		throw new BadArchiveError(say('archives.noSums', { archive }));
	for (const { path, sha256 } of stated) {
		if (found.get(path) === sha256) continue;
		const what = found.has(path) ? 'changed' : 'missing';
		throw new BadArchiveError(say('archives.notAsSaved', { path, archive, what }));
	}
	if (stated.length !== found.size || !found.has(DATABASE_FILE))
		throw new BadArchiveError(say('archives.tooFew', { stated: stated.length, archive, found: found.size }));
	const path = join(folder, DATABASE_FILE);
	const connection = new DatabaseSync(path, { readOnly: true });
	try {
		await lookInto(connection, (await stat(path)).size, archive);
		checkDatabase(connection, path);
		refuseLater(connection, archive);
	} finally {
		connection.close();
	}
	return found.size;
}

async function requireArchive(archive: string): Promise<void> {
	const expected = say('archives.expected', { archive });
	const found = await stat(archive).catch((error: unknown) => {
		const meaning = meaningOfSystemError(error);
		throw meaning === null ? error : new BadArchiveError(`${expected}; ${meaning}.`);
	});
	if (!found.isFile()) throw new BadArchiveError(say('archives.isFolder', { expected }));
}

/**
 * Restores an archive into an empty or new folder. It is unpacked beside it and verified first; only then does it take its place, in one
 * step. What start-up looks for is looked for before that; `lookInto` sees the database before anything of it is used. Throws `BadArchiveError` with the home as it was.
 */
export async function restoreBackup(
	archive: string,
	home: string,
	now: () => Date,
	lookInto: LookingInto = async () => {},
): Promise<Restored> {
	await requireArchive(archive);
	const homePath = resolve(home);
	const inTheWay = (await isFolder(homePath)) ? await readdir(homePath) : [];
	if (inTheWay.length > 0)
		throw new BadArchiveError(say('archives.notEmpty', { home: homePath, count: inTheWay.length }));
	await makeHomeFolder(dirname(homePath));
	const unpacked = await mkdtemp(`${homePath}.restoring-`);
	try {
		const files = await unpack(archive, unpacked, lookInto);
		const opened = await openHome(unpacked, { now });
		await opened.close();
		for (const entry of await readdir(unpacked, { recursive: true, withFileTypes: true }))
			if (entry.isDirectory()) await syncFolder(join(entry.parentPath, entry.name));
		await syncFolder(unpacked);
		// Removes an empty folder only: should anything have come into it meanwhile, this fails and nothing is lost.
		if (existsSync(homePath)) await rmdir(homePath);
		await rename(unpacked, homePath);
		await syncFolder(dirname(homePath));
		return { files, findings: opened.findings };
	} catch (error) {
		await rm(unpacked, { recursive: true, force: true });
		throw error;
	}
}
