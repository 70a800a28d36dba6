import { csvOf } from './csv.ts';

const cellOf = (value: unknown): string | number | boolean | null => {
	if (value === undefined || value === null) return null;
	if (typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string') return value;
	return JSON.stringify(value);
};

/** Things of one kind as a table: a column for every field that any of them has, in order of appearance; what is no single value is JSON. */
export function thingsCsv(things: readonly object[]): string {
	const columns = [...new Set(things.flatMap((thing) => Object.keys(thing)))];
	return csvOf(
		columns,
		things.map((thing) => columns.map((column) => cellOf((thing as Record<string, unknown>)[column]))),
	);
}
