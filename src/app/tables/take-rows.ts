import type { Problem, ReadTable, TableRow } from './read-table.ts';

/** A line cannot be taken; the message says what was expected of which column, and what came. */
export class LineError extends Error {}

/** Problems in the order of the table: the first hundred, since a table that is wrong throughout is not told line by line, and how many there are. */
export type Problems = { readonly first: readonly Problem[]; readonly count: number };

const TOLD = 100;

/** Gives the rows of a table to `take` one by one and collects what cannot be taken: {@link LineError}s, a heading that lacks a column, a table that breaks off. */
export async function takeRows<Column extends string>(
	table: ReadTable<Column>,
	take: (row: TableRow<Column>) => void,
): Promise<Problems> {
	if (!table.ok) return { first: [table.problem], count: 1 };
	const first: Problem[] = [];
	let count = 0;
	const add = (problem: Problem) => {
		count++;
		if (first.length < TOLD) first.push(problem);
	};
	for await (const row of table.rows) {
		if ('message' in row) {
			add(row);
			continue;
		}
		try {
			take(row);
		} catch (error) {
			if (!(error instanceof LineError)) throw error;
			add({ line: row.line, message: error.message });
		}
	}
	return { first, count };
}
