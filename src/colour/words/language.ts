/** The languages that colours are named in. British and American English differ in spelling only. */
export const LANGUAGES = ['en-GB', 'en-US', 'de'] as const;

/** One of {@link LANGUAGES}, as a BCP 47 tag. */
export type Language = (typeof LANGUAGES)[number];

/** The word as the language spells it: American English has gray for grey. */
export const spelled = (word: string, language: Language): string =>
	language === 'en-US' ? word.replaceAll('grey', 'gray') : word;
