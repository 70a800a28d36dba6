import { serve } from '../../server/serve.ts';
import { defaultHomePath } from '../../store/paths.ts';
import { parsedWords } from '../parsed-words.ts';
import { portOf } from '../port.ts';

/** `dyelot serve`: the page; ends when the terminal interrupts it. */
export async function serveCommand(words: readonly string[]): Promise<number> {
	const { values } = parsedWords('serve', words);
	await serve({
		homePath: values.home ?? defaultHomePath(),
		port: portOf(values.port),
		share: values.share ?? false,
		log: console.log,
	});
	return new Promise<number>(() => {});
}
