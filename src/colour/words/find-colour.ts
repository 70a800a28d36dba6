import { hueDegrees, type Lab65 } from '../lab65.ts';
import { type Language, spelled } from './language.ts';
import type { BasicTerm } from './word.ts';
import { entriesOf, findWord, wordsOf } from './word-table.ts';

/** A colour that somebody named. */
export type NamedColour = { readonly word: string; readonly lab: Lab65 };

/** Small letters, grey for gray, one blank for hyphens and runs of blanks: "Blue-Gray" and "blue  grey" are one. */
const plain = (text: string): string =>
	text
		.trim()
		.toLowerCase()
		.replaceAll('gray', 'grey')
		.replaceAll('fuchsia', 'fuschia')
		.replace(/[\s-]+/g, ' ');

/**
 * The colours that a text names, best first: the entry of that very name, those that hold it as a whole word, those that begin with it; at most
 * `most`. Empty where nothing fits. Every survey entry of the language can be named, "scarlet" too, though clothes are then called red.
 */
export function coloursNamed(text: string, language: Language, most = 8): NamedColour[] {
	const asked = plain(text);
	if (asked === '') return [];
	const ranked = wordsOf(language)
		.flatMap(entriesOf)
		.map(({ entry, lab }, rank) => ({ word: entry, lab, rank, kind: matchKind(plain(entry), asked) }))
		.filter(({ kind }) => kind < 4)
		.sort((one, other) => one.kind - other.kind || one.word.length - other.word.length || one.rank - other.rank);
	return ranked
		.slice(0, most)
		.map(({ word, lab }) => ({ word: spelled(word.replaceAll('fuschia', 'fuchsia'), language), lab }));
}

/** 0 the same, 1 begins with it as a whole word, 2 holds it as a whole word, 3 begins with it, 4 not at all. */
function matchKind(entry: string, asked: string): 0 | 1 | 2 | 3 | 4 {
	if (entry === asked) return 0;
	if (entry.startsWith(`${asked} `)) return 1;
	if (` ${entry} `.includes(` ${asked} `)) return 2;
	return entry.startsWith(asked) ? 3 : 4;
}

/** Order in which a grid shows the basic terms: greys, then round the hues as cloth shops lay them out (our choice). */
const GRID_ORDER: readonly BasicTerm[] = [
	'black',
	'grey',
	'white',
	'brown',
	'yellow',
	'orange',
	'red',
	'pink',
	'purple',
	'blue',
	'green',
];

/** One row of the grid: the words filed under a basic term, dark to light, then by hue. */
export type GridRow = { readonly term: BasicTerm; readonly colours: readonly NamedColour[] };

/** All nameable colours of a language, a row a basic term; terms without a word are left out. Each colour is that of the word's commonest entry. */
export const colourGrid = (language: Language): GridRow[] =>
	GRID_ORDER.map((term) => ({
		term,
		colours: wordsOf(language)
			.filter(({ basic }) => basic[0] === term)
			.map((word) => ({ word: spelled(word.word, language), lab: entriesOf(word)[0]!.lab }))
			.sort((one, other) => one.lab[0] - other.lab[0] || hueDegrees(one.lab) - hueDegrees(other.lab)),
	})).filter(({ colours }) => colours.length > 0);

/** The basic terms that a word is filed under, first before second; empty for a text that is no colour word of the language. */
export const basicTermsOf = (word: string, language: Language): readonly BasicTerm[] =>
	findWord(language, word)?.basic ?? [];
