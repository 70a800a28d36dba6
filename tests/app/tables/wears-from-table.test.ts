import { describe, expect, it } from 'vitest';
import { wearsCsv, wearsFromTable } from '../../../src/app/tables/wears-from-table.ts';

const garments = [
	{ id: 'g1', name: 'Oat shirt' },
	{ id: 'g2', name: 'Boots' },
	{ id: 'g3', name: 'boots' },
	{ id: 'g4', name: '=sum, of all' },
];
const noted = [
	{ garmentId: 'g1', on: '2026-03-01' },
	{ garmentId: 'g4', on: '2026-03-02' },
];
const imported = (text: string, before = noted) =>
	wearsFromTable(new TextEncoder().encode(text), garments, before, '2026-03-10');

describe('a table of wears', () => {
	it('takes a garment by its id or by a name that only one has', async () => {
		const { wears, problems } = await imported('day,garment\n2026-03-10,g2\n2026-03-05, oat SHIRT \n');
		expect(problems.count).toBe(0);
		expect(wears).toEqual([
			{ garmentId: 'g2', on: '2026-03-10' },
			{ garmentId: 'g1', on: '2026-03-05' },
		]);
	});

	it('says of each line it cannot take what was expected and what came', async () => {
		const { wears, problems } = await imported(
			'Date;Piece\n2026-02-30;g1\n10.3.2026;g1\n2026-03-11;g1\n2026-03-01;Boots\n2026-03-01;coat\n2026-03-02;g1\n',
		);
		expect(wears).toEqual([{ garmentId: 'g1', on: '2026-03-02' }]);
		expect(problems.first.map(({ line }) => line)).toEqual([2, 3, 4, 5, 6]);
		expect(problems.first[0]!.message).toContain('received "2026-02-30"');
		expect(problems.first[2]!.message).toContain('up to today (2026-03-10)');
		expect(problems.first[3]!.message).toContain('2 garments have that name');
		expect(problems.first[4]!.message).toContain('no garment has it');
	});

	it('comes back from our own export: noted already here, new in a home without them', async () => {
		const csv = wearsCsv(noted, garments);
		expect(await imported(csv)).toMatchObject({ wears: [], notedBefore: 2, problems: { count: 0 } });
		expect(await imported(csv, [])).toMatchObject({ wears: noted, notedBefore: 0, problems: { count: 0 } });
	});

	it('counts a wear that stands in it twice once', async () => {
		const { wears, notedBefore } = await imported('on,garmentId\n2026-03-09,g2\n2026-03-09,g2\n');
		expect(wears).toHaveLength(1);
		expect(notedBefore).toBe(1);
	});

	it('without a column for the day is one problem', async () => {
		const { problems } = await imported('garment,when exactly\ng1,2026-03-01\ng2,2026-03-01\n');
		expect(problems.first).toEqual([
			{
				line: 1,
				message: 'Expected a column "day" in the heading of the table; received "garment" and "when exactly".',
			},
		]);
		expect(problems.count).toBe(1);
	});
});
