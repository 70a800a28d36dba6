import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { garmentsCsv } from '../../../src/store/export/garments-csv.ts';
import { recordsCsv } from '../../../src/store/export/records-csv.ts';
import { aGarment, OAT } from '../../support/build-wardrobe.ts';

const names = ['Coat, long', 'say "oil"', 'line\nbreak', '=1+1', '-dress', '@home', 'معطف 🧥', "'tis", '  x', '1e5'];
const garments = names.map((name, index) =>
	aGarment({
		id: `g${index}`,
		lab: OAT,
		name,
		kind: 'coat',
		place: 'stored',
		price: 12.5,
		boughtOn: '2026-03-14',
		yearParts: ['spring', 'autumn'],
		basic: true,
		loved: 3,
		condition: 'worn',
		notes: 'Zeile\r\nzwei',
		care: 'cold; no spin',
	}),
);

describe('garments as a table', () => {
	it('are read by a general CSV reader, name by name', () => {
		const rows = parse(garmentsCsv(garments), { columns: true }) as { id: string; colours: string }[];
		expect(rows.map(({ id }) => id)).toEqual(garments.map(({ id }) => id));
		expect(rows[0]!.colours).toMatch(/\d+ %/);
	});

	it('start no formula in a spreadsheet', () => {
		// OWASP, CSV Injection: cells must not begin with = + - @ tab or carriage return
		const rows = parse(garmentsCsv(garments)) as string[][];
		for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
	});
});

describe('other things as a table', () => {
	it('have a column for each field, nested ones as JSON', () => {
		const csv = recordsCsv([
			{ id: 'w1', name: 'Boots', slots: ['shoes'] },
			{ id: 'w2', name: null, used: true },
		]);
		expect(parse(csv, { columns: true })).toEqual([
			{ id: 'w1', name: 'Boots', slots: '["shoes"]', used: '' },
			{ id: 'w2', name: '', slots: '', used: 'true' },
		]);
	});
});
