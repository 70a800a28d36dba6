import { LANGUAGES, type Language, languageFrom } from '../../../src/colour/words/language.ts';

const KEPT_AS = 'dyelot-language';

/** The language chosen on this page, or null where it follows the browser. */
function chosenLanguage(): Language | null {
	try {
		const kept = localStorage.getItem(KEPT_AS);
		return LANGUAGES.find((language) => language === kept) ?? null;
	} catch {
		// A browser that keeps nothing follows its own language.
		return null;
	}
}

/** The language of the page: the one chosen here, else the browser's first that is spoken here. */
export const pageLanguage = (): Language => chosenLanguage() ?? languageFrom(navigator.languages.join(','));
