import { createWriteStream } from 'node:fs';
import { parseArgs } from 'node:util';
import { writeBackup } from '../../store/backup.ts';
import { openHome } from '../../store/open-home.ts';
import { defaultHomePath } from '../../store/paths.ts';
import { restoreBackup } from '../../store/restore.ts';
import { UsageError } from '../usage.ts';

const options = { home: { type: 'string' } } as const;

/** `dyelot backup FILE`: everything kept, in one archive. */
export async function backupCommand(words: string[]): Promise<number> {
	const { values, positionals } = parseArgs({ args: words, allowPositionals: true, options });
	const [file] = positionals;
	if (!file || positionals.length > 1)
		throw new UsageError(`Expected one file to write for "backup"; received ${positionals.length}.`);
	const homePath = values.home ?? defaultHomePath();
	const home = await openHome(homePath, { now: () => new Date() });
	try {
		for (const path of await writeBackup(homePath, createWriteStream(file, { flags: 'wx' })))
			console.error(
				`Expected "${path}" as it was added; its bytes have changed on the disk. The backup holds it as it is.`,
			);
	} finally {
		await home.close();
	}
	console.log(`Everything in ${homePath} is now also in ${file}.`);
	return 0;
}

/** `dyelot restore FILE --home FOLDER`: an archive into an empty home. */
export async function restoreCommand(words: string[]): Promise<number> {
	const { values, positionals } = parseArgs({ args: words, allowPositionals: true, options });
	const [file] = positionals;
	if (!file || positionals.length > 1)
		throw new UsageError(`Expected one archive for "restore"; received ${positionals.length}.`);
	if (!values.home)
		throw new UsageError('Expected --home FOLDER for "restore", so that no home is mixed up; it is missing.');
	const files = await restoreBackup(file, values.home);
	console.log(`${files} files checked and restored into ${values.home}.`);
	return 0;
}
