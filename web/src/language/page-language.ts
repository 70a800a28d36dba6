import { LANGUAGES, type Language, languageFrom } from '../../../src/colour/words/language.ts';

const KEPT_AS = 'dyelot-language';

/** The language chosen on this page, or null where it follows the browser. */
export function chosenLanguage(): Language | null {
	try {
		const kept = localStorage.getItem(KEPT_AS);
		return LANGUAGES.find((language) => language === kept) ?? null;
	} catch {
		// A browser that keeps nothing follows its own spelling.
		return null;
	}
}

/** The language of the page: the one chosen here, else the first that the browser asks for and that is spoken here. */
export const pageLanguage = (): Language => chosenLanguage() ?? languageFrom(navigator.languages.join(','));

/** Keeps the choice (null: as the browser asks) and opens the page anew in it. */
export function chooseLanguage(language: Language | null): void {
	if (language === null) localStorage.removeItem(KEPT_AS);
	else localStorage.setItem(KEPT_AS, language);
	location.reload();
}
