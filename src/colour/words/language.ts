/** The languages that colours are named in. British and American English differ in spelling only. */
export const LANGUAGES = ['en-GB', 'en-US', 'de'] as const;

/** One of {@link LANGUAGES}, as a BCP 47 tag. */
export type Language = (typeof LANGUAGES)[number];

/** The word as the language spells it: American English has gray for grey. */
export const spelled = (word: string, language: Language): string =>
	language === 'en-US' ? word.replaceAll('grey', 'gray') : word;

/** What a language tag asks for: `de-AT` is German, `en-US` American, any other English British; `undefined` for what is not spoken here. */
export function languageOfTag(tag: string): Language | undefined {
	const plain = tag.trim().toLowerCase();
	if (/^de(-|$)/.test(plain)) return 'de';
	if (/^en-us(-|$)/.test(plain)) return 'en-US';
	return /^en(-|$)/.test(plain) ? 'en-GB' : undefined;
}

/**
 * The first language spoken here of a list of wishes such as an `Accept-Language` header ("de-AT,de;q=0.9,en;q=0.8"; RFC 9110, section 12.5.4) or a locale
 * of the system ("de_DE.UTF-8"); British English where there is none. The list is taken in its order: clients write it best first.
 */
export const languageFrom = (wishes: string | undefined): Language =>
	(wishes ?? '')
		.split(',')
		.map((wish) => languageOfTag(wish.split(/[;.]/)[0]!.replaceAll('_', '-')))
		.find((language) => language !== undefined) ?? 'en-GB';
