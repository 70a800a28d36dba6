import { csvOf } from './csv.ts';

const cellOf = (value: unknown): string | number | boolean | null => {
	if (value === undefined || value === null) return null;
	if (typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string') return value;
	return JSON.stringify(value);
};

/** Things of one kind as a table: a column for every field that any of them has, in order of appearance; what is no single value is JSON. */
export function recordsCsv(records: readonly object[]): string {
	const columns = [...new Set(records.flatMap((record) => Object.keys(record)))];
	return csvOf(
		columns,
		records.map((record) => columns.map((column) => cellOf((record as Record<string, unknown>)[column]))),
	);
}
