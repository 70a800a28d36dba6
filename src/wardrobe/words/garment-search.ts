import { colourWord } from '../../colour/words/colour-word.ts';
import { basicTermsOf } from '../../colour/words/find-colour.ts';
import { findWord } from '../../colour/words/word-table.ts';
import { say, spokenLanguage } from '../../language/speak.ts';
import type { Garment } from './garment.ts';
import { slotOfKind } from './kind.ts';
import { seenSwatches } from './main-colour.ts';

/** Small letters, one spelling of grey, words only. */
const wordsIn = (text: string): string[] =>
	text
		.toLowerCase()
		.replaceAll('gray', 'grey')
		.split(/[^\p{L}\p{N}'’]+/u)
		.filter(Boolean);

/** The words of the colours that are seen of a garment, and the basic term that each is filed under: navy is found as blue too. */
function colourWordsOf(garment: Garment): string[] {
	const language = spokenLanguage();
	return seenSwatches(garment).flatMap(({ lab }) => {
		const word = colourWord(lab, language, garment.trust.error);
		return [
			word,
			...basicTermsOf(word, language)
				.slice(0, 1)
				.map((term) => say(`basicColours.${term}`)),
		];
	});
}

/** Every word that a search finds a garment by. `paletteNames`: the user's own names of the palette colours that it wears. */
export const searchWordsOf = (garment: Garment, paletteNames: readonly string[]): ReadonlySet<string> =>
	new Set(
		[
			garment.name,
			say(`kinds.${garment.kind}`),
			say(`slots.${slotOfKind(garment.kind)}`),
			say(`patterns.${garment.pattern.type}`),
			garment.notes,
			garment.care,
			...colourWordsOf(garment),
			...paletteNames,
		].flatMap(wordsIn),
	);

/** Whether a typed word is a colour: such a word must be met whole, since "red" does not mean "reddish"; others by their beginning. */
const isColour = (word: string): boolean => findWord(spokenLanguage(), word) !== undefined;

/** Whether every word of the text is found among a garment's words; an empty text finds all. */
export const isFoundBy = (text: string, words: ReadonlySet<string>): boolean =>
	wordsIn(text).every((asked) =>
		isColour(asked) ? words.has(asked) : [...words].some((word) => word.startsWith(asked)),
	);
