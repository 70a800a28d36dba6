import { describe, expect, it } from 'vitest';
import { bradfordMatrix, type Xyz } from '../../src/colour/adaptation.ts';
import { adaptXyz, WHITE_D50 } from '../support/other-whites.ts';
import { numbersOf, referenceRows } from '../support/reference.ts';

const triple = (row: Record<string, string>, ...columns: [string, string, string]) =>
	numbersOf(row, ...columns) as unknown as Xyz;
const source = (row: Record<string, string>) => triple(row, 'Xws', 'Yws', 'Zws');
const target = (row: Record<string, string>) => triple(row, 'Xwd', 'Ywd', 'Zwd');

// Lindbloom's table of adaptation matrices, 7 decimals (fixtures/reference/README.md says where it was read).
const matrices = referenceRows('chromatic-adaptation-matrices.csv').filter(
	({ transform, status }) => transform === 'Bradford' && status === 'published',
);

// Worked cases, published and computed; each row names its source.
const cases = referenceRows('chromatic-adaptation.csv').filter(({ transform }) => transform === 'Bradford');

describe('Bradford adaptation against published figures', () => {
	it('has tables to compare with', () => {
		expect(matrices.length).toBeGreaterThanOrEqual(6);
		expect(cases.length).toBeGreaterThanOrEqual(2);
	});

	it.each(matrices)('the matrix from $src to $dst is the published one', (row) => {
		const published = numbersOf(row, 'm11', 'm12', 'm13', 'm21', 'm22', 'm23', 'm31', 'm32', 'm33');
		for (const [index, value] of bradfordMatrix(source(row), target(row)).entries())
			expect(value).toBeCloseTo(published[index]!, 6);
	});

	it.each(cases)('the worked case $case ($status) comes out', (row) => {
		const adapted = adaptXyz(triple(row, 'Xin', 'Yin', 'Zin'), source(row), target(row), Number(row.D));
		for (const [index, value] of adapted.entries())
			expect(value).toBeCloseTo(triple(row, 'Xout', 'Yout', 'Zout')[index]!, 6);
	});

	it('holds for the D50 white of ICC profiles that the other tests use', () => {
		const row = matrices.find(({ dst }) => dst === 'D50')!;
		expect(WHITE_D50).toEqual(target(row));
	});
});
