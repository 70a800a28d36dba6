import { describe, expect, it } from 'vitest';
import { yearPartOf } from '../../../src/wardrobe/days/season-defaults.ts';

const month = (year: number, index: number) => {
	const day = (date: Date) => date.toISOString().slice(0, 10);
	return [day(new Date(Date.UTC(year, index, 1))), day(new Date(Date.UTC(year, index + 1, 0)))] as const;
};

describe('the part of the year of a season', () => {
	// Meteorological seasons of the north: winter is December to February, and so on by threes (World Meteorological Organization; Met Office).
	it.each([
		['winter', [11, 0, 1]],
		['spring', [2, 3, 4]],
		['summer', [5, 6, 7]],
		['autumn', [8, 9, 10]],
	] as const)('is %s for each of its months', (part, months) => {
		for (const index of months) expect(yearPartOf(...month(2026, index))).toBe(part);
	});

	it('is that of its middle, over the turn of the year too', () => {
		expect(yearPartOf('2026-12-01', '2027-02-28')).toBe('winter');
		expect(yearPartOf('2026-02-01', '2026-05-31')).toBe('spring');
	});
});
