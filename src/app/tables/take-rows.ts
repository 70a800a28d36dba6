import { setImmediate as letOthersIn } from 'node:timers/promises';
import type { Problem, ReadTable, TableRow } from './read-table.ts';

/** A line cannot be taken; the message says what was expected of which column, and what came. */
export class LineError extends Error {}

/** Problems in the order of the table: the first hundred, since a table that is wrong throughout is not told line by line, and how many there are. */
export type Problems = { readonly first: readonly Problem[]; readonly count: number };

const TOLD = 100;
/** Rows after which other requests have their turn: a millisecond of work. */
const ROWS_A_TURN = 200;

/** Gives the rows of a table to `take` one by one and collects what cannot be taken: {@link LineError}s, a heading that lacks a column, a table that breaks off. Other work has its turn in between. */
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
	let rows = 0;
	for (const row of table.rows) {
		rows++;
		if (rows % ROWS_A_TURN === 0) await letOthersIn();
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
