import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { garmentsCsv } from '../../../src/store/export/garments-csv.ts';
import { garmentsFromCsv } from '../../../src/store/export/garments-import.ts';
import { thingsCsv } from '../../../src/store/export/things-csv.ts';
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

	it('come back as they were', () => {
		const { garments: back, problems } = garmentsFromCsv(garmentsCsv(garments));
		expect(problems).toEqual([]);
		expect(back.map(({ name }) => name)).toEqual(names.map((name) => name.trim()));
		expect(back[0]).toMatchObject({
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
		});
	});
});

describe('a table of garments to bring in', () => {
	it('says for each line what would be added and what cannot be taken, with line and reason', () => {
		const { garments: added, problems } = garmentsFromCsv(
			'\ufeffname,kind,price,boughtOn\r\nCoat,coat,"12,50",\r\n,coat,,\r\nHat,spaceship,,\r\nShoes,shoes,free,\r\nBag,bag,,yesterday\r\n',
		);
		expect(added.map(({ name, price }) => [name, price])).toEqual([['Coat', 12.5]]);
		expect(problems.map(({ line }) => line)).toEqual([3, 4, 5, 6]);
		for (const { message } of problems) expect(message).toMatch(/^Expected .+ for ".+"; received ".*"\.$/);
	});

	it.each([
		['nothing', ''],
		['no heading that is known', 'a,b\r\n1,2'],
		['an open quote', 'name,kind\r\n"Coat,coat'],
		['bytes of a picture', '\u0089PNG\r\n\u001a\n\0\0\0'],
	])('of %s adds nothing and does not fail', (_what, text) => {
		expect(garmentsFromCsv(text).garments).toEqual([]);
	});
});

describe('other things as a table', () => {
	it('have a column for each field, nested ones as JSON', () => {
		const csv = thingsCsv([
			{ id: 'w1', name: 'Boots', slots: ['shoes'] },
			{ id: 'w2', name: null, used: true },
		]);
		expect(parse(csv, { columns: true })).toEqual([
			{ id: 'w1', name: 'Boots', slots: '["shoes"]', used: '' },
			{ id: 'w2', name: '', slots: '', used: 'true' },
		]);
	});
});
