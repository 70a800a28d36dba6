import { createHash, randomBytes } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { PART_ENDING } from './durable-write.ts';
import { createPrivateFile, makePrivateFolder } from './private-files.ts';

/** Folder of a home for files that are just coming in; what start-up finds there is half of something nobody was told of. */
export const INCOMING_FOLDER = 'incoming';

/** A file that came in whole and is on disk, but belongs to nothing yet: it is moved to its place, or dropped. */
export type IncomingFile = {
	/** Absolute. */
	readonly path: string;
	readonly sha256: string;
	readonly sizeBytes: number;
};

/** Removes the file where it was not moved on. */
export const dropIncoming = ({ path }: IncomingFile): Promise<void> => rm(path, { force: true });

/** Longer than a phone's network is gone between two rooms; a stream that is silent for longer would keep its file for ever. */
const SILENCE_MS = 30_000;

/**
 * Writes a stream into a file of the folder as it comes, never more than a few pieces of it in memory, and syncs it. Nothing is left where the
 * stream fails, or brings nothing for `silenceMs`.
 */
export async function receiveFile(from: Readable, folder: string, silenceMs = SILENCE_MS): Promise<IncomingFile> {
	await makePrivateFolder(folder);
	const path = join(folder, `${randomBytes(8).toString('hex')}${PART_ENDING}`);
	const file = await createPrivateFile(path);
	const hash = createHash('sha256');
	let sizeBytes = 0;
	const silence = setTimeout(() => from.destroy(new Error('nothing came any more')), silenceMs);
	const hashing = new Transform({
		transform(chunk: Buffer, _encoding, done) {
			silence.refresh();
			hash.update(chunk);
			sizeBytes += chunk.length;
			done(null, chunk);
		},
	});
	try {
		await pipeline(from, hashing, file.createWriteStream({ flush: true }));
	} catch (error) {
		await rm(path, { force: true });
		throw error;
	} finally {
		clearTimeout(silence);
	}
	return { path, sha256: hash.digest('hex'), sizeBytes };
}
