import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** The rows of a table in fixtures/reference, by column name; its first line, a comment, is passed over. */
export const referenceRows = (name: string): Record<string, string>[] =>
	parse(readFileSync(new URL(`../../fixtures/reference/${name}`, import.meta.url)), {
		columns: true,
		from_line: 2,
	});

/** Numbers of the named columns of a row. */
export const numbersOf = (row: Record<string, string>, ...columns: string[]): number[] =>
	columns.map((column) => Number(row[column]));
