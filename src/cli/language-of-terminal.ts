import { LANGUAGES, type Language, languageFrom, languageOfTag } from '../colour/words/language.ts';
import { say } from '../language/speak.ts';
import { UsageError } from './usage.ts';

/** The language that the terminal is set to (POSIX.1-2017, section 8.2: LC_ALL before LC_MESSAGES before LANG); British English where it asks for none spoken here. */
export const languageOfTerminal = ({ LC_ALL, LC_MESSAGES, LANG }: Readonly<NodeJS.ProcessEnv>): Language =>
	languageFrom(LC_ALL || LC_MESSAGES || LANG);

const FLAG = '--language';

/** The words of a call without `--language`, and what it asks for, `null` where it is not there. Throws `UsageError` where that is not spoken here. */
export function languageAsked(words: readonly string[]): {
	readonly rest: readonly string[];
	readonly language: Language | null;
} {
	const at = words.findIndex((word) => word === FLAG || word.startsWith(`${FLAG}=`));
	if (at === -1) return { rest: words, language: null };
	const isJoined = words[at] !== FLAG;
	const received = isJoined ? words[at]!.slice(FLAG.length + 1) : (words[at + 1] ?? '');
	const language = languageOfTag(received.replaceAll('_', '-').replace(/\..*$/, ''));
	if (!language) throw new UsageError(say('cli.noLanguage', { known: LANGUAGES.join(', '), received }), null);
	return { rest: words.toSpliced(at, isJoined ? 1 : 2), language };
}
