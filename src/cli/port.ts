import { USUAL_PORT } from '../app/usual-port.ts';
import { say } from '../language/speak.ts';
import type { CommandName } from './command-words.ts';
import { wholeNumberOf } from './points.ts';
import { UsageError } from './usage.ts';

/** The port of `--port`, 0 = any free one. Throws `UsageError`. */
export function portOf(text: string | undefined, command: CommandName = 'serve'): number {
	if (text === undefined) return USUAL_PORT;
	const port = wholeNumberOf(text);
	if (!(port <= 65_535)) throw new UsageError(say('cli.badPort', { received: text }), command);
	return port;
}
