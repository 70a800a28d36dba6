import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { garmentsFromTable } from '../../../src/app/tables/garments-from-table.ts';
import { garmentsCsv } from '../../../src/store/export/garments-csv.ts';
import { aGarment, OAT } from '../../support/build-wardrobe.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const found = (text: string, garments = wardrobe) => garmentsFromTable(bytes(text), garments);

const names = [
	'Coat, long',
	'say "oil"',
	'line\nbreak',
	'=1+1',
	'-dress',
	"'=2",
	"''@x",
	'@home',
	'معطف 🧥',
	"'tis",
	'  x',
	'1e5',
];
const wardrobe = names.map((name, index) =>
	aGarment({
		id: `g${index}`,
		lab: OAT,
		name,
		kind: 'coat',
		kindFrom: 'photo',
		place: 'stored',
		price: [12.5, null, 0.1 + 0.2, 1e-7][index % 4]!,
		boughtOn: '2026-03-14',
		yearParts: ['spring', 'autumn'],
		basic: true,
		loved: 3,
		warmth: 0,
		condition: 'worn',
		wayOut: 'sell',
		patternByUser: 'checked',
		notes: 'Zeile\r\nzwei',
		care: 'cold; no spin',
	}),
);

describe('our own export of garments', () => {
	it('comes back without a change', async () => {
		const { added, changed, unchanged, problems } = await found(garmentsCsv(wardrobe));
		expect({ added, changed, problems: problems.first }).toEqual({ added: [], changed: [], problems: [] });
		expect(unchanged).toBe(wardrobe.length);
	});

	it('comes back as what was changed in it, an emptied cell as no longer told', async () => {
		const csv = garmentsCsv(wardrobe.slice(0, 2)).replace('12.5,2026-03-14', ',2026-03-15').replace('stored', 'rail');
		const { changed, unchanged } = await found(csv);
		expect(unchanged).toBe(1);
		expect(changed.map(({ garment, changes, columns }) => [garment.id, changes, columns])).toEqual([
			['g0', { place: 'rail', price: null, boughtOn: '2026-03-15' }, ['place', 'price', 'boughtOn']],
		]);
	});

	it('goes into another home with all that it tells, and comes back from there without a change', async () => {
		const { added, problems } = await found(garmentsCsv(wardrobe.slice(0, 2)), []);
		expect(problems.count).toBe(0);
		const {
			id,
			name,
			kind,
			place,
			price,
			yearParts,
			basic,
			loved,
			warmth,
			condition,
			wayOut,
			patternByUser,
			notes,
			care,
		} = wardrobe[0]!;
		expect(added[0]).toMatchObject({
			id,
			name,
			kind,
			place,
			price,
			yearParts,
			basic,
			loved,
			warmth,
			condition,
			wayOut,
			patternByUser,
			notes,
			care,
		});
	});

	it('is the same table after a spreadsheet wrote it with semicolons and decimal commas', async () => {
		const rows = parse(garmentsCsv(wardrobe.slice(0, 1))) as string[][];
		const text = rows
			.map((row) => row.map((cell) => `"${cell.replace('12.5', '12,50').replaceAll('"', '""')}"`).join(';'))
			.join('\n');
		const { form, unchanged } = await found(text);
		expect(form.separator).toBe('semicolon');
		expect(unchanged).toBe(1);
	});

	it('brings any name back, whatever stands in it', async () => {
		const text = fc
			.string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
			.filter((name) => name.trim() !== '' && !name.includes('\0'));
		const starts = fc.constantFrom("'", "'=", '=', '"', '\t', '-', '@', '');
		await fc.assert(
			fc.asyncProperty(fc.tuple(starts, text), async ([start, rest]) => {
				const garment = aGarment({ id: 'g', lab: OAT, name: start + rest });
				expect((await found(garmentsCsv([garment]), [garment])).unchanged).toBe(1);
			}),
			{ numRuns: 300 },
		);
	});
});

describe('a table of garments from elsewhere', () => {
	it('written by Python in Windows-1252 with tabs and its own headings is understood', async () => {
		const { form, added, problems } = await garmentsFromTable(readFileSync('fixtures/tables/windows-1252-tab.csv'), []);
		expect(problems.first).toEqual([]);
		expect(form).toEqual({ encoding: 'Windows-1252', separator: 'tab' });
		expect(added.map(({ name, kind, price, boughtOn, yearParts }) => [name, kind, price, boughtOn, yearParts])).toEqual(
			[
				['Blouse, size 38', 'shirt', 24.5, '2026-03-14', ['spring', 'summer']],
				// Seasons that are named twice are one, in the order of the year.
				['Größe 40; crème', 'jumper', 19.9, '2024-02-29', ['autumn', 'winter']],
				['Señora’s coat', 'coat', 120, undefined, undefined],
				['6" heel – black', 'boots', 0, '2000-02-29', ['autumn']],
			],
		);
	});

	it('says for each line that it cannot take what was expected and what came', async () => {
		const cells = [
			',coat,,',
			'Hat,spaceship,,',
			'Shoes,shoes,free,',
			'Bag,bag,0x10,',
			'Belt,belt,1e3,',
			'Coat,coat,,2026-02-31',
			'Cap,hat,,1900-02-29',
			'Scarf,scarf,1.234,',
		];
		const { added, problems } = await found(
			`name,kind,price,boughtOn\r\nCoat,coat,"12,50",\r\n${cells.join('\r\n')}\r\n`,
		);
		expect(added.map(({ name, price }) => [name, price])).toEqual([['Coat', 12.5]]);
		expect(problems.first.map(({ line }) => line)).toEqual([3, 4, 5, 6, 7, 8, 9, 10]);
		for (const { message } of problems.first) expect(message).toMatch(/^Expected .+ for ".+"; received ".*"\.$/);
		expect(problems.first[3]!.message).toContain('received "0x10"');
	});

	it.each([
		['name', 'garments;kind\nCoat;coat\nHat;hat\n', /^Expected a column "name" .+ received "garments" and "kind"\.$/],
		['both', 'a,b\n1,2\n3,4\n', /^Expected columns "name" and "kind"/],
	])('that lacks a column (%s) is one problem, not one a line', async (_column, text, message) => {
		const { added, problems } = await found(text);
		expect(added).toEqual([]);
		expect(problems.count).toBe(1);
		expect(problems.first[0]).toMatchObject({ line: 1, message: expect.stringMatching(message) });
	});

	it('that is wrong throughout is told by its first hundred lines and their number', async () => {
		const { problems } = await found(`name,kind\n${'Coat,spaceship\n'.repeat(500)}`);
		expect(problems.count).toBe(500);
		expect(problems.first).toHaveLength(100);
	});

	it('takes steps from 0 to 3 and no others', async () => {
		const { added, problems } = await found(
			`name,kind,loved\n${['-1', '0', '3', '4', '1.5'].map((step) => `Hat,hat,${step}\n`).join('')}`,
		);
		expect(added.map(({ loved }) => loved)).toEqual([0, 3]);
		expect(problems.first.map(({ line }) => line)).toEqual([2, 5, 6]);
	});

	it('says how many are like a garment that is there already, and refuses one id twice', async () => {
		const { added, likeOthers, problems } = await found('id,name,kind\n,"coat, LONG",coat\nx,Hat,hat\nx,Hat,hat\n');
		expect(added).toHaveLength(2);
		expect(likeOthers).toBe(1);
		expect(problems.first).toMatchObject([{ line: 4, message: expect.stringContaining('on line 3') }]);
	});

	it.each([
		['nothing', ''],
		['no heading that is known', 'a,b\r\n1,2'],
		['a quotation mark that is never closed', 'name,kind\r\n"Coat,coat'],
		['bytes of a picture', '\u0089PNG\r\n\u001a\n\0\0\0'],
		['a workbook', 'PK\u0003\u0004rest'],
		['a line that names the separator alone', 'sep=;\r\n'],
	])('of %s adds nothing and says so once', async (_what, text) => {
		const { added, problems } = await found(text);
		expect(added).toEqual([]);
		expect(problems.count).toBe(1);
	});

	it('may name its separator in a first line, as spreadsheets do', async () => {
		const { form, added, problems } = await found('sep=;\nname;kind\nCoat, long;coat\nx;y\n');
		expect(form.separator).toBe('semicolon');
		expect(added.map(({ name }) => name)).toEqual(['Coat, long']);
		expect(problems.first[0]!.line).toBe(4);
	});
});
