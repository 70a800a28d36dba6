import { medianOf } from '../src/colour/median.ts';

/** One measured row: a name and its figures, in the order of the table's columns. */
export type Row = readonly [name: string, ...figures: (string | number)[]];

/** A table that a section of the bench prints. */
export type Table = {
	readonly title: string;
	readonly columns: readonly string[];
	readonly rows: readonly Row[];
	readonly notes?: readonly string[];
	/** Costs against a yardstick of the same run, by name: less is better. They are kept in BASELINE.json. */
	readonly ratios?: Readonly<Record<string, number>>;
};

const shown = (figure: string | number): string =>
	typeof figure === 'string' ? figure : Number.isInteger(figure) ? String(figure) : figure.toFixed(figure < 10 ? 2 : 1);

/** Plain text, columns aligned. */
export function textOfTable({ title, columns, rows, notes = [] }: Table): string {
	const cells = [columns.map(String), ...rows.map((row) => row.map(shown))];
	const widths = columns.map((_, column) => Math.max(...cells.map((row) => (row[column] ?? '').length)));
	const line = (row: readonly string[]) =>
		row
			.map((cell, column) => (column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!)))
			.join('  ');
	return [
		`\n## ${title}`,
		line(cells[0]!),
		widths.map((width) => '-'.repeat(width)).join('  '),
		...cells.slice(1).map(line),
		...notes,
	].join('\n');
}

/** Milliseconds of wall clock and of CPU that some work took. */
export async function timed(work: () => unknown): Promise<{ wallMs: number; cpuMs: number }> {
	const cpuBefore = process.cpuUsage();
	const start = performance.now();
	await work();
	const wallMs = performance.now() - start;
	const { user, system } = process.cpuUsage(cpuBefore);
	return { wallMs, cpuMs: (user + system) / 1000 };
}

/** Median of `runs` timings in milliseconds of wall clock and of CPU, after one run to warm up. */
export async function medianMs(runs: number, work: () => unknown): Promise<{ wallMs: number; cpuMs: number }> {
	await work();
	const timings: Awaited<ReturnType<typeof timed>>[] = [];
	for (let i = 0; i < runs; i++) timings.push(await timed(work));
	return {
		wallMs: medianOf(timings.map(({ wallMs }) => wallMs)),
		cpuMs: medianOf(timings.map(({ cpuMs }) => cpuMs)),
	};
}
