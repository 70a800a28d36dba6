import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Row, Table } from './table.ts';

const file = fileURLToPath(new URL('./BASELINE.json', import.meta.url));

/** Ratios of one run by name: each sets a cost against a yardstick of the same run, so less is better, and machines can be compared. */
type Ratios = Readonly<Record<string, number>>;

const kept = (): Ratios => JSON.parse(readFileSync(file, 'utf8')) as Ratios;

const ratiosOf = (tables: readonly Table[]): Ratios => Object.assign({}, ...tables.map(({ ratios = {} }) => ratios));

/** The ratios of this run beside the kept ones, with how much they rose in percent; null where no table has any. */
export function besideBaseline(tables: readonly Table[]): Table | null {
	const now = Object.entries(ratiosOf(tables));
	if (now.length === 0) return null;
	const before = kept();
	const rows = now.map(([name, value]): Row => {
		const was = before[name];
		return was === undefined ? [name, 'new', value, ''] : [name, was, value, 100 * (value / was - 1)];
	});
	return {
		title: 'Ratios beside the kept ones (less is better)',
		columns: ['', 'kept', 'now', 'risen by %'],
		rows,
		notes: [
			'Runs of one state differ by a few per cent, on a busy machine by a tenth. `npm run bench -- --keep` keeps these.',
		],
	};
}

/** Keeps the ratios of this run in place of those of the same names. */
export function keepBaseline(tables: readonly Table[]): void {
	const rounded = Object.entries(ratiosOf(tables)).map(([name, value]) => [name, Number(value.toPrecision(3))]);
	const all = { ...kept(), ...Object.fromEntries(rounded) };
	const sorted = Object.fromEntries(Object.entries(all).sort(([one], [other]) => one.localeCompare(other)));
	writeFileSync(file, `${JSON.stringify(sorted, null, '\t')}\n`);
}
