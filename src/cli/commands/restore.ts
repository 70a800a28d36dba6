import { spoken } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import { restoreBackup } from '../../store/restore.ts';
import { parsedWords } from '../parsed-words.ts';
import { UsageError } from '../usage.ts';

/** `dyelot restore FILE --home FOLDER`: an archive into an empty home. */
export async function restoreCommand(words: readonly string[]): Promise<number> {
	const { values, rest } = parsedWords('restore', words);
	const archive = rest[0]!;
	if (values.home === undefined) throw new UsageError(say('cli.noHome'), 'restore');
	const { files, findings } = await restoreBackup(archive, values.home, () => new Date());
	console.log(
		values.json
			? JSON.stringify({ home: values.home, archive, files, findings: findings.map(spoken) })
			: [say('cli.restored', { count: files, home: values.home }), ...findings.map(spoken)].join('\n'),
	);
	return 0;
}
