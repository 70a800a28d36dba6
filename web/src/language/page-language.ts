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

/**
 * The language of the page: the one chosen here, else English as the browser's languages spell it. German is spoken only where it is chosen, as long as
 * some pages do not speak it: half a page in each language would surprise.
 */
export function pageLanguage(): Language {
	const chosen = chosenLanguage();
	if (chosen) return chosen;
	return languageFrom(navigator.languages.filter((tag) => tag.startsWith('en')).join(','));
}

/** Keeps the choice (null: English, as the browser spells it) and opens the page anew in it. */
export function chooseLanguage(language: Language | null): void {
	if (language === null) localStorage.removeItem(KEPT_AS);
	else localStorage.setItem(KEPT_AS, language);
	location.reload();
}
