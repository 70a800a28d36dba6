import { fieldWord } from '../../language/field-word.ts';
import { say } from '../../language/speak.ts';
import { textOfCell } from '../../store/export/csv.ts';
import { encodingOf } from './table-encoding.ts';
import { BrokenTableError, piecesOf, recordsOf, type Separator, type TableRecord } from './table-records.ts';

/** A line of a table that cannot be taken, and why; line 1 is the first of the file. */
export type Problem = { readonly line: number; readonly message: string };

/** Words of a heading that stand for each column; each column's own name comes first and wins. */
export type ColumnWords<Column extends string> = Readonly<Record<Column, readonly string[]>>;

/** A line of the table, cell by cell; columns that the table lacks are absent, an empty cell is ''. */
export type TableRow<Column extends string> = {
	readonly line: number;
	readonly cells: Readonly<Partial<Record<Column, string>>>;
};

/** How the table was taken. */
export type TableForm = { readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252'; readonly separator: SeparatorName };

export type SeparatorName = 'comma' | 'semicolon' | 'tab';

export type ReadTable<Column extends string> =
	| {
			readonly ok: true;
			readonly form: TableForm;
			readonly columns: readonly Column[];
			readonly rows: Iterable<TableRow<Column> | Problem>;
	  }
	| { readonly ok: false; readonly form: TableForm; readonly problem: Problem };

const SEPARATORS: Readonly<Record<Separator, SeparatorName>> = { ',': 'comma', ';': 'semicolon', '\t': 'tab' };

/** A heading's word without capitals, blanks and signs: "Bought on" and "boughtOn" are one. */
const plain = (word: string): string =>
	word
		.normalize('NFKC')
		.toLowerCase()
		.replace(/[^\p{L}\p{N}]/gu, '');

/** Where each column stands in the heading; of two words for one column the column's own name wins, then the earlier word of the list. */
function placesIn<Column extends string>(
	heading: readonly string[],
	words: ColumnWords<Column>,
): ReadonlyMap<Column, number> {
	const given = heading.map(plain);
	const places = new Map<Column, number>();
	for (const column of Object.keys(words) as Column[]) {
		const place = [column, ...words[column]].map((word) => given.indexOf(plain(word))).find((at) => at >= 0);
		if (place !== undefined && ![...places.values()].includes(place)) places.set(column, place);
	}
	return places;
}

/** The first line of spreadsheets that say how they separate ("sep=;"). */
const SEPARATOR_LINE = /^sep=([,;\t])\r?\n/i;

/** A workbook is a ZIP archive (its first bytes: APPNOTE.TXT, section 4.3.7); older ones are OLE files. */
const isWorkbook = (bytes: Uint8Array): boolean =>
	(bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4) ||
	(bytes[0] === 0xd0 && bytes[1] === 0xcf && bytes[2] === 0x11 && bytes[3] === 0xe0);

/** The first record of the text, whatever comes after it. */
function headingOf(text: string, separator: Separator): readonly string[] {
	try {
		for (const { cells } of recordsOf([text], separator)) return cells;
		return [];
	} catch (error) {
		if (error instanceof BrokenTableError) return [];
		throw error;
	}
}

/** The separator under which the heading has most columns that are known; then most columns. */
function separatorOf<Column extends string>(text: string, words: ColumnWords<Column>): Separator {
	const tried = (Object.keys(SEPARATORS) as Separator[]).map((separator) => {
		const heading = headingOf(text, separator);
		return { separator, placed: placesIn(heading, words).size, columns: heading.length };
	});
	return tried.sort((a, b) => b.placed - a.placed || b.columns - a.columns)[0]!.separator;
}

/** The text in pieces from its first character that is one; a line that names the separator is taken off and told. */
function beginningOf(pieces: Iterator<string>): { first: string; told: Separator | null } {
	let next = pieces.next();
	while (!next.done && next.value === '') next = pieces.next();
	const text = next.done ? '' : next.value;
	const told = SEPARATOR_LINE.exec(text);
	return { first: text.slice(told?.[0].length ?? 0), told: (told?.[1] as Separator | undefined) ?? null };
}

/** Rows after the heading; the last one is a problem where the table breaks off. `linesBefore` the text were taken off. */
function* rowsAfterHeading<Column extends string>(
	records: Generator<TableRecord>,
	places: ReadonlyMap<Column, number>,
	linesBefore: number,
): Generator<TableRow<Column> | Problem> {
	try {
		records.next();
		for (const { line, cells } of records) {
			const row: Partial<Record<Column, string>> = {};
			for (const [column, place] of places) row[column] = textOfCell(cells[place] ?? '').trim();
			yield { line: line + linesBefore, cells: row };
		}
	} catch (error) {
		if (!(error instanceof BrokenTableError)) throw error;
		yield { line: error.line + linesBefore, message: error.message };
	}
}

/** "a", "a" and "b", "a", "b" and "c", in quotation marks. */
const listed = (words: readonly string[]): string =>
	words
		.map((word) => `"${word.slice(0, 40)}"`)
		.join(', ')
		.replace(/, ([^,]*)$/, ' and $1');

/**
 * Reads a table's heading, and its rows as they are asked for. Comma, semicolon or tab; UTF-8, UTF-16 or Windows-1252; headings in any case and
 * by any of their words. `needed` = columns without which the table is of no use, given those it has. A table that is none, or lacks a column, is one problem.
 */
export function readTable<Column extends string>(
	bytes: Uint8Array,
	words: ColumnWords<Column>,
	needed: (columns: readonly Column[]) => readonly Column[],
): ReadTable<Column> {
	const encoding = encodingOf(bytes);
	const pieces = piecesOf(bytes, encoding);
	const { first, told } = beginningOf(pieces);
	const separator = told ?? separatorOf(first, words);
	const form: TableForm = { encoding: encoding.name, separator: SEPARATORS[separator] };
	const refuse = (message: string): ReadTable<Column> => ({ ok: false, form, problem: { line: 1, message } });
	if (isWorkbook(bytes)) return refuse(say('tables.workbook'));
	const heading = headingOf(first, separator);
	if (heading.length === 0) return refuse(say('tables.noHeading'));
	const places = placesIn(heading, words);
	const columns = [...places.keys()];
	const missing = needed(columns).filter((column) => !places.has(column));
	if (missing.length > 0)
		return refuse(
			say('tables.noColumn', {
				count: missing.length,
				missing: listed(missing.map(fieldWord)),
				heading: listed(heading.slice(0, 12)),
			}),
		);
	const text = (function* () {
		yield first;
		yield* pieces;
	})();
	return {
		ok: true,
		form,
		columns,
		rows: rowsAfterHeading(recordsOf(text, separator), places, told === null ? 0 : 1),
	};
}
