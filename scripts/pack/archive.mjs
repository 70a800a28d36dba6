// Archives that come out the same to the byte for the same files: entries in order of name, one date, no owner.
import { createHash } from 'node:crypto';
import { createWriteStream, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import { pack } from 'tar-stream';
import { ZipFile } from 'yazl';

/** The date that every entry carries. ZIP knows none before 1980. */
const DATE = new Date('2000-01-01T00:00:00Z');

/** Files below `folder`, by name: path with slashes, whether it may be run. */
export const filesOf = (folder) =>
	readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name))
		.map((path) => ({
			path: path
				.slice(folder.length + 1)
				.split(sep)
				.join('/'),
			from: path,
			mode: statSync(path).mode & 0o100 ? 0o755 : 0o644,
		}))
		.sort((one, other) => (one.path < other.path ? -1 : 1));

async function writeTar(files, top, to) {
	const tar = pack();
	const written = pipeline(tar, createGzip({ level: 9 }), createWriteStream(to));
	for (const { path, from, mode } of files)
		tar.entry({ name: `${top}/${path}`, mode, mtime: DATE, uid: 0, gid: 0 }, readFileSync(from));
	tar.finalize();
	await written;
}

async function writeZip(files, top, to) {
	const zip = new ZipFile();
	for (const { path, from, mode } of files)
		zip.addBuffer(readFileSync(from), `${top}/${path}`, {
			mtime: DATE,
			mode: 0o100000 | mode,
			compressionLevel: 9,
			forceDosTimestamp: true,
		});
	zip.end();
	await pipeline(zip.outputStream, createWriteStream(to));
}

/** Writes the folder's files below `top` into `to`, whose ending (.zip or .tar.gz) says how. */
export const writeArchive = (folder, top, to) => (to.endsWith('.zip') ? writeZip : writeTar)(filesOf(folder), top, to);

export const sha256Of = (path) => createHash('sha256').update(readFileSync(path)).digest('hex');
