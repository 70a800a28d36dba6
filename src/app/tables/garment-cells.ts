import type { GarmentColumn } from '../../store/export/garments-csv.ts';
import { CONDITIONS, type GarmentDetails, PLACES, WAYS_OUT, YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { isDay } from '../../wardrobe/words/iso-day.ts';
import { KIND_NAMES, KINDS } from '../../wardrobe/words/kind.ts';
import { PATTERN_TYPES } from '../../wardrobe/words/reading.ts';
import type { ColumnWords } from './read-table.ts';

/** What a heading may call each column; common practice, no source. */
export const GARMENT_WORDS: ColumnWords<GarmentColumn> = {
	id: [],
	name: ['garment', 'piece', 'item', 'title'],
	kind: ['type', 'category'],
	place: ['where', 'location'],
	price: ['cost', 'paid', 'price paid'],
	boughtOn: ['bought', 'date bought', 'purchased', 'purchase date'],
	yearParts: ['seasons', 'season', 'parts of the year', 'time of year'],
	basic: ['year round', 'all year'],
	loved: ['love'],
	warmth: ['warm'],
	condition: ['state'],
	wayOut: ['leaves by'],
	pattern: ['pattern by user'],
	notes: ['note', 'comments', 'comment', 'remarks'],
	care: ['care instructions', 'washing', 'wash'],
};

/** What a cell says: the fields it sets, or what was expected instead. */
type Said = Partial<GarmentDetails> | string;

/** Words for the same thing in a cell; common practice, no source. */
const SAME_WORDS: Readonly<Record<string, string>> = {
	fall: 'autumn',
	...Object.fromEntries(Object.entries(KINDS).map(([kind, { label }]) => [label.toLowerCase(), kind])),
};

const wordIn = <T extends string>(words: readonly T[], text: string): T | undefined => {
	const given = text.toLowerCase();
	return words.find((word) => word === given || word === SAME_WORDS[given]);
};

function oneOf<T extends string>(words: readonly T[], text: string, said: (word: T) => Said): Said {
	const word = wordIn(words, text);
	return word === undefined ? `one of ${words.join(', ')}` : said(word);
}

/** Digits, with a point or comma before one or two more, and perhaps the sign of a currency beside them. */
const PRICE = /^\p{Sc}? ?(\d{1,9}(?:[.,]\d{1,2})?) ?\p{Sc}?$/u;

function price(text: string): Said {
	const [, digits] = PRICE.exec(text) ?? [];
	return digits === undefined ? 'a price in digits, like 24 or 24.50' : { price: Number(digits.replace(',', '.')) };
}

function step(text: string, said: (step: 0 | 1 | 2 | 3) => Said): Said {
	return /^[0-3]$/.test(text) ? said(Number(text) as 0 | 1 | 2 | 3) : 'a whole number from 0 to 3';
}

/** Parts of the year with blanks, commas or semicolons between, each taken once, in the order of the year. */
function yearParts(text: string): Said {
	const given = text.split(/[\s,;/+]+/).filter((word) => word !== '');
	const parts = given.map((word) => wordIn(YEAR_PARTS, word));
	return parts.includes(undefined)
		? `any of ${YEAR_PARTS.join(', ')}`
		: { yearParts: YEAR_PARTS.filter((part) => parts.includes(part)) };
}

const YES = ['yes', 'y', 'true', '1'];
const NO = ['no', 'n', 'false', '0'];

function basic(text: string): Said {
	const given = text.toLowerCase();
	return YES.includes(given) ? { basic: true } : NO.includes(given) ? { basic: false } : 'yes or no';
}

const shortText = (most: number, text: string, said: Said): Said =>
	text.length <= most ? said : `at most ${most} characters`;

/** What a cell that is not empty says. */
export const CELL_MEANINGS: Readonly<Record<GarmentColumn, (text: string) => Said>> = {
	id: (text) => (/^[A-Za-z0-9_-]{1,100}$/.test(text) ? { id: text } : 'the id of a garment, as an export writes it'),
	name: (text) => shortText(200, text, { name: text, nameFrom: 'user' }),
	kind: (text) => oneOf(KIND_NAMES, text, (kind) => ({ kind, kindFrom: 'user' })),
	place: (text) => oneOf(PLACES, text, (place) => ({ place })),
	price,
	boughtOn: (text) => (isDay(text) ? { boughtOn: text } : 'a day of the calendar like 2026-03-14'),
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
