import { parseArgs } from 'node:util';
import { serve } from '../../server/serve.ts';
import { defaultHomePath } from '../../store/paths.ts';
import { portOf } from '../port.ts';

/** `dyelot serve`: the page; ends when the terminal interrupts it. */
export async function serveCommand(words: string[]): Promise<number> {
	const { values } = parseArgs({
		args: words,
		options: { home: { type: 'string' }, port: { type: 'string' }, share: { type: 'boolean', default: false } },
	});
	await serve({
		homePath: values.home ?? defaultHomePath(),
		port: portOf(values.port),
		share: values.share,
		log: console.log,
	});
	return new Promise<number>(() => {});
}
