import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { mkdir, mkdtemp, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';
import tar from 'tar-stream';
import { DATABASE_FILE, type OpenHome } from './open-home.ts';

/** First entry of an archive: what is in it, with the SHA-256 of each file. */
type Manifest = {
	readonly format: 'dyelot-home';
	readonly version: 1;
	readonly files: readonly { readonly path: string; readonly sizeBytes: number; readonly sha256: string }[];
};

const MANIFEST = 'manifest.json';

/** The archive is not what was expected; nothing was changed. */
export class BadArchiveError extends Error {}

async function hashOf(path: string): Promise<string> {
	const hash = createHash('sha256');
	await pipeline(createReadStream(path), hash);
	return hash.digest('hex');
}

async function filesBelow(folder: string): Promise<string[]> {
	if (!existsSync(folder)) return [];
	const entries = await readdir(folder, { recursive: true, withFileTypes: true });
	return entries
		.filter((entry) => entry.isFile() && !entry.name.endsWith('.part'))
		.map((entry) => join(entry.parentPath, entry.name))
		.sort();
}

/**
 * Writes the whole home as one tar archive: a snapshot of the database taken while the program runs, all photos, and a manifest with
 * checksums as its first entry. Derived pictures come along, so that a restored home needs no reading.
 */
export async function writeBackup(
	home: Pick<OpenHome, 'database'>,
	homePath: string,
	to: NodeJS.WritableStream,
): Promise<void> {
	const work = await mkdtemp(join(homePath, '.backup-'));
	try {
		const snapshot = join(work, DATABASE_FILE);
		home.database.connection.exec(`VACUUM INTO '${snapshot.replaceAll("'", "''")}'`);
		const photos = [...(await filesBelow(join(homePath, 'photos'))), ...(await filesBelow(join(homePath, 'derived')))];
		const sources = [
			{ path: DATABASE_FILE, from: snapshot },
			...photos.map((from) => ({ path: relative(homePath, from).split(sep).join('/'), from })),
		];
		const files: Manifest['files'][number][] = [];
		for (const { path, from } of sources)
			files.push({ path, sizeBytes: (await stat(from)).size, sha256: await hashOf(from) });
		const manifest: Manifest = { format: 'dyelot-home', version: 1, files };
		const pack = tar.pack();
		const written = pipeline(pack, to);
		pack.entry({ name: MANIFEST }, JSON.stringify(manifest));
		for (const [index, { path, from }] of sources.entries()) {
			const entry = pack.entry({ name: path, size: files[index]!.sizeBytes });
			await pipeline(createReadStream(from), entry);
		}
		pack.finalize();
		await written;
	} finally {
		await rm(work, { recursive: true, force: true });
	}
}

/** A path inside a home that an archive may write: no way up, no absolute path. */
const isInside = (path: string): boolean => /^(dyelot\.sqlite|(photos|derived)\/[0-9a-f]{2}\/[0-9a-z.]+)$/.test(path);

async function readText(stream: AsyncIterable<unknown>): Promise<string> {
	const chunks: Buffer[] = [];
	for await (const chunk of stream) chunks.push(chunk as Buffer);
	return Buffer.concat(chunks).toString('utf8');
}

function manifestFrom(text: string, archive: string): Manifest {
	let parsed: Partial<Manifest>;
	try {
		parsed = JSON.parse(text) as Partial<Manifest>;
	} catch {
		parsed = {};
	}
	if (parsed.format !== 'dyelot-home' || parsed.version !== 1 || !Array.isArray(parsed.files)) {
		throw new BadArchiveError(`Expected an archive made by "dyelot backup"; ${archive} begins with something else.`);
	}
	return parsed as Manifest;
}

/** Unpacks into `folder` and checks every file against the manifest. */
async function unpack(archive: string, folder: string): Promise<number> {
	const extract = tar.extract();
	const reading = pipeline(createReadStream(archive), extract);
	let manifest: Manifest | null = null;
	const found = new Map<string, string>();
	const consuming = (async () => {
		for await (const entry of extract) {
			const { name } = entry.header;
			if (!manifest) {
				manifest = manifestFrom(name === MANIFEST ? await readText(entry) : '', archive);
				continue;
			}
			if (!isInside(name)) throw new BadArchiveError(`Expected files of a home in ${archive}; it holds "${name}".`);
			const path = join(folder, name);
			await mkdir(dirname(path), { recursive: true });
			const hash = createHash('sha256');
			entry.on('data', (chunk) => hash.update(chunk as Buffer));
			await pipeline(entry, createWriteStream(path));
			const file = await open(path, 'r+');
			await file.sync();
			await file.close();
			found.set(name, hash.digest('hex'));
		}
	})();
	try {
		await Promise.all([reading, consuming]);
	} catch (error) {
		if (error instanceof BadArchiveError) throw error;
		throw new BadArchiveError(
			`Expected a whole archive in ${archive}; it cannot be read to its end (${(error as Error).message}).`,
		);
	}
	const complete = manifest as Manifest | null;
	if (!complete) throw new BadArchiveError(`Expected an archive made by "dyelot backup"; ${archive} is empty.`);
	for (const { path, sha256 } of complete.files) {
		if (found.get(path) !== sha256)
			throw new BadArchiveError(
				`Expected "${path}" in ${archive} as it was saved; it is ${found.has(path) ? 'changed' : 'missing'}.`,
			);
	}
	return complete.files.length;
}

/** Checks an archive without keeping anything of it; returns the number of files. Throws `BadArchiveError`. */
export async function checkBackup(archive: string, workFolder: string): Promise<number> {
	await mkdir(workFolder, { recursive: true });
	const folder = await mkdtemp(join(workFolder, 'check-'));
	try {
		return await unpack(archive, folder);
	} finally {
		await rm(folder, { recursive: true, force: true });
	}
}

/**
 * Restores an archive into an empty or new folder. It is unpacked beside it and verified first; only then does it take its place, in one
 * step. Throws `BadArchiveError` with the home as it was.
 */
export async function restoreBackup(archive: string, homePath: string): Promise<number> {
	const inTheWay = existsSync(homePath) ? await readdir(homePath) : [];
	if (inTheWay.length > 0)
		throw new BadArchiveError(
			`Expected an empty folder to restore into; ${homePath} holds ${inTheWay.length} things already. Nothing was changed.`,
		);
	await mkdir(dirname(homePath), { recursive: true });
	const unpacked = await mkdtemp(`${homePath}.restoring-`);
	try {
		const files = await unpack(archive, unpacked);
		await rm(homePath, { recursive: true, force: true });
		await rename(unpacked, homePath);
		return files;
	} catch (error) {
		await rm(unpacked, { recursive: true, force: true });
		throw error;
	}
}
