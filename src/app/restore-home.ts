import type { Readable } from 'node:stream';
import { say } from '../language/speak.ts';
import { BadArchiveError } from '../store/archive.ts';
import { dropIncoming, type IncomingFile } from '../store/incoming-file.ts';
import { asideFolder, prepareHome } from '../store/replace-home.ts';
import { UserError } from './errors.ts';

/** What a restore is about to do: the files that were checked, and where the home as it was is kept. */
export type RestoreAnswer = {
	/** Files of the archive, all of them checked. */
	readonly files: number;
	/** What was put right in it. */
	readonly findings: readonly string[];
	/** Folder beside the home that keeps the home as it was. */
	readonly setAside: string;
};

/** Checks an archive and tells what becomes of it; `begin` starts the program anew over it. */
export type RestoreHome = (from: Readable) => Promise<{ readonly restored: RestoreAnswer; readonly begin: () => void }>;

/**
 * Takes an archive in, checks it beside the home, and has the program start anew over it; what the home holds now is set aside, never deleted.
 * The answer goes out before that. An archive that is not whole changes nothing: `bad-request`.
 */
export const restoreHome =
	(
		{ receive, now }: { readonly receive: (from: Readable) => Promise<IncomingFile>; readonly now: () => Date },
		homePath: string,
		startAnew: (aside: string) => void,
	): RestoreHome =>
	async (from: Readable) => {
		const archive = await receive(from);
		try {
			const { files, findings } = await prepareHome(archive.path, homePath, now);
			const setAside = asideFolder(homePath, now());
			return { restored: { files, findings, setAside }, begin: () => startAnew(setAside) };
		} catch (error) {
			if (error instanceof BadArchiveError)
				throw new UserError('bad-request', error.message.replaceAll(archive.path, say('archives.thisFile')));
			throw error;
		} finally {
			await dropIncoming(archive);
		}
	};
