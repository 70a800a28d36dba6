import { describe, expect, it } from 'vitest';
import { wearsFromRows } from '../../../src/wardrobe/season/wear-rows.ts';

const garments = [
	{ id: 'g1', name: 'Oat shirt' },
	{ id: 'g2', name: 'Boots' },
	{ id: 'g3', name: 'boots' },
];
const imported = (...rows: [day: string, garment: string][]) =>
	wearsFromRows(
		rows.map(([day, garment]) => ({ day, garment })),
		garments,
		'2026-03-10',
		2,
	);

describe('an import of wears', () => {
	it('takes a garment by its id or by a name that only one has', () => {
		expect(imported(['2026-03-10', 'g2'], ['2026-03-01', ' oat SHIRT '])).toEqual({
			wears: [
				{ garmentId: 'g2', on: '2026-03-10' },
				{ garmentId: 'g1', on: '2026-03-01' },
			],
			problems: [],
		});
	});

	it('says of each line it cannot take what was expected and what came', () => {
		const { wears, problems } = imported(
			['2026-02-30', 'g1'],
			['10.3.2026', 'g1'],
			['2026-03-11', 'g1'],
			['2026-03-01', 'Boots'],
			['2026-03-01', 'coat'],
			['2026-03-02', 'g1'],
		);
		expect(wears).toEqual([{ garmentId: 'g1', on: '2026-03-02' }]);
		expect(problems.map(({ line }) => line)).toEqual([2, 3, 4, 5, 6]);
		expect(problems[0]!.message).toContain('received "2026-02-30"');
		expect(problems[2]!.message).toContain('up to today (2026-03-10)');
		expect(problems[3]!.message).toContain('2 garments have it');
		expect(problems[4]!.message).toContain('none has it');
	});
});
