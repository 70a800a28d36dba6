import { spoken } from '../../language/kept-sentence.ts';
import { serve } from '../../server/serve.ts';
import { defaultHomePath } from '../../store/paths.ts';
import { openPage } from '../open-page.ts';
import { parsedWords } from '../parsed-words.ts';
import { portOf } from '../port.ts';

/** `dyelot serve`: the page; ends when the terminal interrupts it. */
export async function serveCommand(words: readonly string[]): Promise<number> {
	const { values } = parsedWords('serve', words);
	const { address } = await serve({
		homePath: values.home ?? defaultHomePath(),
		port: portOf(values.port),
		share: values.share ?? false,
		log: (sentence) => console.log(spoken(sentence)),
	});
	if (values.open) await openPage(address);
	return new Promise<number>(() => {});
}
