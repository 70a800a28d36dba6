import { say } from '../../language/speak.ts';
import { readerThreads } from '../../photo/readers/pool.ts';
import { workHosted } from '../../server/hosted/work-hosted.ts';
import { hostedSettings, settingReader } from '../hosted-settings.ts';
import { parsedWords } from '../parsed-words.ts';
import { wholeNumberOf } from '../points.ts';
import { portOf } from '../port.ts';
import { UsageError } from '../usage.ts';

const MOST_AT_ONCE = 16;

function atOnceOf(text: string | undefined): number {
	if (text === undefined) return readerThreads();
	const count = wholeNumberOf(text);
	if (count >= 1 && count <= MOST_AT_ONCE) return count;
	throw new UsageError(say('hostCommands.badAtOnce', { most: MOST_AT_ONCE, received: text }), 'work');
}

/** `dyelot work`: reads photos of all homes; ends when a signal stops it. */
export async function workCommand(words: readonly string[]): Promise<number> {
	const { values } = parsedWords('work', words);
	const setting = settingReader(values, process.env);
	const port = setting('port');
	await workHosted({
		...(await hostedSettings('work', values)),
		port: port === undefined ? null : portOf(port, 'work'),
		threads: atOnceOf(setting('at-once')),
	});
	return new Promise<number>(() => {});
}
