import { describe, expect, it } from 'vitest';
import { isDay } from '../../../src/wardrobe/words/iso-day.ts';

describe('a day', () => {
	it('is what the calendar of ECMAScript (ECMA-262, "Day Number and Year Number") says, for every number of 1896 to 2104', () => {
		const two = (n: number) => String(n).padStart(2, '0');
		for (let year = 1896; year <= 2104; year++)
			for (let month = 0; month <= 13; month++)
				for (let day = 0; day <= 32; day++) {
					const date = new Date(Date.UTC(year, month - 1, day));
					const exists =
						date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
					if (isDay(`${year}-${two(month)}-${two(day)}`) !== exists)
						expect.fail(`${year}-${two(month)}-${two(day)} is ${exists ? 'a' : 'no'} day`);
				}
	});

	// ISO 8601-1:2019, 5.2.2: year in four digits, month and day in two, hyphens between.
	it.each([
		'',
		'2026-3-1',
		'20260301',
		'2026-03-01T00:00',
		' 2026-03-01',
		'2026/03/01',
		'0000-01-01',
		'٢٠٢٦-٠٣-٠١',
		'2026-03-01\n',
	])('is not "%s"', (text) => {
		expect(isDay(text)).toBe(false);
	});
});
