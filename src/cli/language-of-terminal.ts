import { type Language, languageFrom } from '../colour/words/language.ts';

/** The language that the terminal is set to (POSIX.1-2017, section 8.2: LC_ALL before LC_MESSAGES before LANG); British English where it asks for none spoken here. */
export const languageOfTerminal = ({ LC_ALL, LC_MESSAGES, LANG }: Readonly<NodeJS.ProcessEnv>): Language =>
	languageFrom(LC_ALL || LC_MESSAGES || LANG);
