import { describe, expect, it } from 'vitest';
import { languageFrom } from '../../../src/colour/words/language.ts';

describe('the language asked for', () => {
	// Forms of the header: RFC 9110, section 12.5.4; of a locale: POSIX, IEEE Std 1003.1, section 8.2.
	it.each([
		['de', 'de'],
		['de-AT,de;q=0.9,en;q=0.8', 'de'],
		['fr-FR, de;q=0.5', 'de'],
		['en-US,en;q=0.9', 'en-US'],
		['en', 'en-GB'],
		['en-AU', 'en-GB'],
		['de_DE.UTF-8', 'de'],
		['en_US.UTF-8', 'en-US'],
		['C', 'en-GB'],
		['*', 'en-GB'],
		['', 'en-GB'],
		[undefined, 'en-GB'],
	] as const)('%s is %s', (wishes, language) => expect(languageFrom(wishes)).toBe(language));
});
