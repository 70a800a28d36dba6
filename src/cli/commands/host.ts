import { say } from '../../language/speak.ts';
import { readerThreads } from '../../photo/readers/pool.ts';
import { serveHosted } from '../../server/hosted/serve-hosted.ts';
import { hostedSettings, settingReader } from '../hosted-settings.ts';
import { parsedWords } from '../parsed-words.ts';
import { portOf } from '../port.ts';
import { UsageError } from '../usage.ts';

/** The address that people type. It must be that of a whole host: cookies and passkeys belong to one. */
function originOf(address: string): URL {
	const origin = URL.canParse(address) ? new URL(address) : null;
	if (origin && /^https?:$/.test(origin.protocol) && origin.pathname === '/' && origin.search === '') return origin;
	throw new UsageError(say('hostCommands.otherAddress', { address }), 'host');
}

/** `dyelot host`: the page for many people; ends when a signal stops it. */
export async function hostCommand(words: readonly string[]): Promise<number> {
	const { values } = parsedWords('host', words);
	const setting = settingReader(values, process.env);
	const port = portOf(setting('port'), 'host');
	if (port === 0) throw new UsageError(say('hostCommands.noPort'), 'host');
	await serveHosted({
		...(await hostedSettings('host', values)),
		port,
		origin: originOf(setting('address') ?? `http://localhost:${port}`),
		proxies: values['behind-proxy'] ?? setting('behind-proxy')?.split(',') ?? [],
		threads: readerThreads(),
	});
	return new Promise<number>(() => {});
}
