import { type Lab65, labFromHex } from '../lab65.ts';
import { ENGLISH_WORDS } from './english-words.ts';
import { GERMAN_WORDS } from './german-words.ts';
import type { Language } from './language.ts';
import type { ColourWord } from './word.ts';

/** One survey entry: what people typed, the mean colour of it, and the word that stands for it. */
export type SurveyEntry = { readonly entry: string; readonly lab: Lab65; readonly word: ColourWord };

const TABLES: Readonly<Record<'en' | 'de', readonly ColourWord[]>> = { en: ENGLISH_WORDS, de: GERMAN_WORDS };

/** All colour words of a language. */
export const wordsOf = (language: Language): readonly ColourWord[] => TABLES[language === 'de' ? 'de' : 'en'];

/** The survey entries of a word with their colours, commonest first. */
export const entriesOf = (word: ColourWord): SurveyEntry[] =>
	word.entries.split(', ').map((text) => {
		const space = text.lastIndexOf(' ');
		return { entry: text.slice(0, space), lab: labFromHex(text.slice(space + 1))!, word };
	});

/** The word of that name in the language, however its grey is spelt, or `undefined`. */
export const findWord = (language: Language, name: string): ColourWord | undefined => {
	const plain = name.trim().toLowerCase().replaceAll('gray', 'grey');
	return wordsOf(language).find(({ word }) => word === plain);
};
