import { GERMAN } from '../../language/catalogue.ts';
import { say } from '../../language/speak.ts';
import type { GarmentColumn } from '../../store/export/garments-csv.ts';
import { CONDITIONS, type GarmentDetails, PLACES, WAYS_OUT, YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { isDay } from '../../wardrobe/words/iso-day.ts';
import { KIND_NAMES, KINDS } from '../../wardrobe/words/kind.ts';
import { PATTERN_TYPES } from '../../wardrobe/words/reading.ts';

/** What a cell says: the fields it sets, or what was expected instead. */
type Said = Partial<GarmentDetails> | string;

/** German words of the page for what a cell holds, by what it is stored as. */
const GERMAN_WORDS = [
	GERMAN.kinds,
	GERMAN.yearParts,
	GERMAN.whereabouts,
	GERMAN.conditions,
	GERMAN.waysOut,
	GERMAN.patterns,
].flatMap((words) => Object.entries(words).map(([stored, word]) => [word.toLowerCase(), stored] as const));

/** Words for the same thing in a cell: the page's own, in either language. */
const SAME_WORDS: Readonly<Record<string, string>> = {
	fall: 'autumn',
	...Object.fromEntries(GERMAN_WORDS),
	...Object.fromEntries(Object.entries(KINDS).map(([kind, { label }]) => [label.toLowerCase(), kind])),
};

const wordIn = <T extends string>(words: readonly T[], text: string): T | undefined => {
	const given = text.toLowerCase();
	const same = SAME_WORDS[given];
	return words.find((word) => word === given || word === same);
};

function oneOf<T extends string>(words: readonly T[], text: string, said: (word: T) => Said): Said {
	const word = wordIn(words, text);
	return word === undefined ? say('tableCells.oneOf', { words: words.join(', ') }) : said(word);
}

/** Digits, with a point or comma before one or two more, and perhaps the sign of a currency beside them. */
const PRICE = /^\p{Sc}? ?(\d{1,9}(?:[.,]\d{1,2})?) ?\p{Sc}?$/u;

function price(text: string): Said {
	const [, digits] = PRICE.exec(text) ?? [];
	return digits === undefined ? say('tableCells.price') : { price: Number(digits.replace(',', '.')) };
}

function step(text: string, said: (step: 0 | 1 | 2 | 3) => Said): Said {
	return /^[0-3]$/.test(text) ? said(Number(text) as 0 | 1 | 2 | 3) : say('tableCells.step');
}

/** Parts of the year with blanks, commas or semicolons between, each taken once, in the order of the year. */
function yearParts(text: string): Said {
	const given = text.split(/[\s,;/+]+/).filter((word) => word !== '');
	const parts = given.map((word) => wordIn(YEAR_PARTS, word));
	return parts.includes(undefined)
		? say('tableCells.anyOf', { words: YEAR_PARTS.join(', ') })
		: { yearParts: YEAR_PARTS.filter((part) => parts.includes(part)) };
}

const YES = ['yes', 'y', 'true', '1', 'ja', 'j'];
const NO = ['no', 'n', 'false', '0', 'nein'];

function basic(text: string): Said {
	const given = text.toLowerCase();
	return YES.includes(given) ? { basic: true } : NO.includes(given) ? { basic: false } : say('tableCells.yesOrNo');
}

const shortText = (most: number, text: string, said: Said): Said =>
	text.length <= most ? said : say('tableCells.atMost', { most });

/** What a cell that is not empty says. */
export const CELL_MEANINGS: Readonly<Record<GarmentColumn, (text: string) => Said>> = {
	id: (text) => (/^[A-Za-z0-9_-]{1,100}$/.test(text) ? { id: text } : say('tableCells.id')),
	name: (text) => shortText(200, text, { name: text, nameFrom: 'user' }),
	kind: (text) => oneOf(KIND_NAMES, text, (kind) => ({ kind, kindFrom: 'user' })),
	place: (text) => oneOf(PLACES, text, (place) => ({ place })),
	price,
	boughtOn: (text) => (isDay(text) ? { boughtOn: text } : say('tableCells.day')),
	yearParts,
	basic,
	loved: (text) => step(text, (loved) => ({ loved })),
	warmth: (text) => step(text, (warmth) => ({ warmth })),
	condition: (text) => oneOf(CONDITIONS, text, (condition) => ({ condition })),
	wayOut: (text) => oneOf(WAYS_OUT, text, (wayOut) => ({ wayOut })),
	pattern: (text) => oneOf(PATTERN_TYPES, text, (patternByUser) => ({ patternByUser })),
	notes: (text) => shortText(20_000, text, { notes: text }),
	care: (text) => shortText(20_000, text, { care: text }),
};

/** What an empty cell says of a garment that is there already: what may be untold is untold; the rest stays as it is. */
export const EMPTY_CELLS: Readonly<Partial<Record<GarmentColumn, Partial<GarmentDetails>>>> = {
	price: { price: null },
	boughtOn: { boughtOn: null },
	yearParts: { yearParts: [] },
	loved: { loved: null },
	warmth: { warmth: null },
	wayOut: { wayOut: null },
	pattern: { patternByUser: null },
	notes: { notes: '' },
	care: { care: '' },
};
