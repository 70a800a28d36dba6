import { createHash } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { basename, join, relative, sep } from 'node:path';
import { Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { DatabaseSync } from '@photostructure/sqlite';
import tar from 'tar-stream';
import { ARCHIVE_CHECKSUMS, ARCHIVE_FORMAT, ARCHIVE_HEAD, type ArchivedFile } from './archive.ts';
import { BACKUP_WORK, FOUND_FOLDER } from './check-photo-files.ts';
import { PART_ENDING } from './durable-write.ts';
import { filesBelow } from './files-below.ts';
import { type OpenedFile, openFile } from './open-file.ts';
import { DATABASE_FILE } from './open-home.ts';
import { copyDatabase } from './sqlite/copy-database.ts';

/** A file of an archive, opened when its turn comes; null where it went meanwhile (an old outline). */
export type ArchiveEntry = { readonly path: string; readonly open: () => Promise<OpenedFile | null> };

/** Copies the database as it is at one moment, while the program goes on writing; returns the ids of its photos. */
async function snapshotDatabase(homePath: string, to: string): Promise<Set<string>> {
	await copyDatabase(join(homePath, DATABASE_FILE), to);
	const snapshot = new DatabaseSync(to);
	try {
		const ids = new Set<string>();
		snapshot.function('told', (id: unknown) => {
			ids.add(String(id));
			return null;
		});
		// A prepared statement would wait for the garbage collector, and keep the file open until then.
		snapshot.exec('SELECT told(id) FROM photos');
		return ids;
	} finally {
		snapshot.close();
	}
}

/** Photo files that the snapshot names, and what start-up once found. Photos added after the snapshot belong to the next backup. */
async function photoPaths(homePath: string, ids: ReadonlySet<string>): Promise<string[]> {
	const below = async (folder: string) => filesBelow(join(homePath, folder));
	const named = [...(await below('photos')), ...(await below('derived'))].filter((path) =>
		ids.has(basename(path).slice(0, 64)),
	);
	return [...named, ...(await below(FOUND_FOLDER))].filter((path) => !path.endsWith(PART_ENDING));
}

/** Puts one file into the archive, hashing it on the way, until `signal` ends it; null where there is none any more. */
async function packFile(
	pack: tar.Pack,
	{ path, open }: ArchiveEntry,
	signal: AbortSignal,
): Promise<ArchivedFile | null> {
	const opened = await open();
	if (opened === null) return null;
	const { sizeBytes, stream } = opened;
	if (signal.aborted) stream.destroy();
	signal.throwIfAborted();
	const hash = createHash('sha256');
	const hashing = new Transform({
		transform(chunk: Buffer, _encoding, done) {
			hash.update(chunk);
			done(null, chunk);
		},
	});
	await pipeline(stream, hashing, pack.entry({ name: path, size: sizeBytes }), { signal });
	return { path, sizeBytes, sha256: hash.digest('hex') };
}

/**
 * Writes files as one tar archive, its head first and their checksums last, no faster than it is taken; returns what is in it. Where nobody
 * takes it any more the files that are still to come are left.
 */
export async function packArchive(
	entries: AsyncIterable<ArchiveEntry>,
	to: NodeJS.WritableStream,
): Promise<readonly ArchivedFile[]> {
	const pack = tar.pack();
	// Packing waits for room to write; where nobody takes the archive any more, it must be told, or its open file waits for ever.
	const stop = new AbortController();
	const written = pipeline(pack, to);
	written.catch(() => stop.abort());
	const entry = (name: string, content: unknown) => pack.entry({ name }, JSON.stringify(content));
	const write = async () => {
		const files: ArchivedFile[] = [];
		let isBegun = false;
		for await (const one of entries) {
			stop.signal.throwIfAborted();
			// Not before there is something to pack: until then a fault can still be answered.
			if (!isBegun) entry(ARCHIVE_HEAD, ARCHIVE_FORMAT);
			isBegun = true;
			const file = await packFile(pack, one, stop.signal);
			if (file) files.push(file);
		}
		entry(ARCHIVE_CHECKSUMS, files);
		pack.finalize();
		return files;
	};
	const writing = write().catch((error: unknown) => {
		pack.destroy(error as Error);
		throw error;
	});
	// An archive that cannot be written says more than the packing that it stopped.
	const [packed, delivered] = await Promise.allSettled([writing, written]);
	if (delivered.status === 'rejected') throw delivered.reason;
	if (packed.status === 'rejected') throw packed.reason;
	return packed.value;
}

/** A snapshot of the database, and all photo files that it names. */
async function* entriesOf(homePath: string): AsyncGenerator<ArchiveEntry> {
	const work = await mkdtemp(join(homePath, BACKUP_WORK));
	try {
		const snapshot = join(work, DATABASE_FILE);
		const ids = await snapshotDatabase(homePath, snapshot);
		yield { path: DATABASE_FILE, open: () => openFile(snapshot) };
		for (const from of await photoPaths(homePath, ids))
			yield { path: relative(homePath, from).split(sep).join('/'), open: () => openFile(from) };
	} finally {
		await rm(work, { recursive: true, force: true });
	}
}

/**
 * Writes the whole home as one tar archive: a snapshot of the database taken while the program runs, all photos it names, and checksums.
 * Derived pictures come along, so that a restored home needs no reading. Returns the paths of originals that are no longer the bytes they
 * were added as (their name is their SHA-256); they are in the archive as they are.
 */
export async function writeBackup(homePath: string, to: NodeJS.WritableStream): Promise<string[]> {
	const files = await packArchive(entriesOf(homePath), to);
	return files
		.filter(({ path, sha256 }) => path.startsWith('photos/') && !path.endsWith(sha256))
		.map(({ path }) => path);
}
