import { restoreBackup } from '../../store/restore.ts';
import { parsedWords } from '../parsed-words.ts';
import { UsageError } from '../usage.ts';

/** `dyelot restore FILE --home FOLDER`: an archive into an empty home. */
export async function restoreCommand(words: readonly string[]): Promise<number> {
	const { values, rest } = parsedWords('restore', words);
	const archive = rest[0]!;
	if (values.home === undefined)
		throw new UsageError(
			'Expected --home FOLDER for "restore", so that no home is mixed up; it is missing.',
			'restore',
		);
	const files = await restoreBackup(archive, values.home);
	console.log(
		values.json
			? JSON.stringify({ home: values.home, archive, files })
			: `${files} files checked and restored into ${values.home}.`,
	);
	return 0;
}
