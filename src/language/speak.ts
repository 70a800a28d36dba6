import { createInstance } from 'i18next';
import type { Language } from '../colour/words/language.ts';
import { AMERICAN } from './american.ts';
import { ENGLISH, GERMAN } from './catalogue.ts';
import { keptForm } from './kept-form.ts';

type English = typeof ENGLISH;

/** Names of sentences: "kinds.shirt"; what depends on a number is named without its ending `_one` or `_other`. */
export type SentenceKey = {
	[Area in keyof English & string]: `${Area}.${Singular<keyof English[Area] & string>}`;
}[keyof English & string];
type Singular<Key extends string> = Key extends `${infer Base}_one` | `${infer Base}_other` ? Base : Key;

/** What a sentence has blanks for; `count` chooses between its forms. */
export type Blanks = Readonly<Record<string, string | number>>;

const catalogue = createInstance();
catalogue.init({
	lng: 'en-GB',
	fallbackLng: { 'en-US': ['en-GB'], default: [] },
	resources: {
		'en-GB': { translation: ENGLISH },
		'en-US': { translation: AMERICAN },
		de: { translation: GERMAN },
	},
	interpolation: { escapeValue: false },
	initAsync: false,
});

const SPEAKERS = {
	'en-GB': catalogue.getFixedT('en-GB'),
	'en-US': catalogue.getFixedT('en-US'),
	de: catalogue.getFixedT('de'),
} as const;

/** Sentences are not said but kept by their names: see `kept-sentence.ts`. */
export type Voice = Language | 'kept';

/** Tells the language that the program speaks outside {@link inLanguage}. */
let source: () => Voice = () => 'en-GB';
/** What {@link inLanguage} asks for just now. */
let asked: Voice | null = null;

/** Whether sentences are kept just now, not said. */
export const keepsSentences = (): boolean => (asked ?? source()) === 'kept';

/** The language that is spoken just now: that of the innermost {@link inLanguage}, else what {@link speak} set; British English at first. */
export function spokenLanguage(): Language {
	const voice = asked ?? source();
	return voice === 'kept' ? 'en-GB' : voice;
}

/**
 * Sets the language of the program: one for the page, the pocket page and the command line, which serve one person; a function for the server, which
 * answers each request in the language it asks for.
 */
export function speak(language: Voice | (() => Voice)): void {
	source = typeof language === 'function' ? language : () => language;
}

/** Does the work with all its words in that language. The work must be done when it returns: a promise is a `TypeError`, since others would speak meanwhile. */
export function inLanguage<T>(language: Voice, work: () => T): T {
	const before = asked;
	asked = language;
	try {
		const done = work();
		if (done instanceof Promise) throw new TypeError('Expected work that is done at once; received a promise.');
		return done;
	} finally {
		asked = before;
	}
}

/** The words of a name as the catalogue has them, or undefined where there are none. */
function lookedUp(key: string, language: Language): string | undefined {
	const own = catalogue.getResource(language, 'translation', key) as string | undefined;
	return own ?? (language === 'en-US' ? lookedUp(key, 'en-GB') : undefined);
}

/** Words already looked up: finding a name in the catalogue costs more than filling its blanks. */
const FOUND: Readonly<Record<Language, Map<string, string | undefined>>> = {
	'en-GB': new Map(),
	'en-US': new Map(),
	de: new Map(),
};

function wordsOf(key: string, language: Language): string | undefined {
	const found = FOUND[language];
	if (!found.has(key)) found.set(key, lookedUp(key, language));
	return found.get(key);
}

/** Whether the catalogue has words of that name: for names put together from what came from elsewhere. */
export const isSaid = (name: string): name is SentenceKey => wordsOf(name, 'en-GB') !== undefined;

/** Which form a number asks for, "one" or "other" (Unicode CLDR, through Intl). */
const FORMS: Readonly<Record<Language, Intl.PluralRules>> = {
	'en-GB': new Intl.PluralRules('en-GB'),
	'en-US': new Intl.PluralRules('en-US'),
	de: new Intl.PluralRules('de'),
};

/** What fills a blank; one that is written with a capital, `{{Colour}}`, with a capital first letter, as German writes a colour after "in". */
function filled(blank: string, blanks: Blanks): string {
	const value = blanks[blank];
	if (value !== undefined) return String(value);
	const text = String(blanks[blank.charAt(0).toLowerCase() + blank.slice(1)] ?? '');
	return text.charAt(0).toUpperCase() + text.slice(1);
}

/**
 * The sentence of that name in the language that is spoken, its blanks filled. The library is only asked where its own rules are needed: in a
 * report of 2,000 garments it took a quarter of the time (bench/NOTES.md).
 */
export function say(key: SentenceKey, blanks: Blanks = {}): string {
	if (keepsSentences()) return keptForm(key, blanks);
	const language = spokenLanguage();
	const { count } = blanks;
	const form = typeof count === 'number' ? wordsOf(`${key}_${FORMS[language].select(count)}`, language) : undefined;
	const words = form ?? wordsOf(key, language);
	if (words === undefined) return SPEAKERS[language](key, blanks);
	return words.replace(/{{(\w+)}}/g, (_, blank: string) => filled(blank, blanks));
}
