import { describe, expect, it } from 'vitest';
import { labFromText } from '../../web/src/pages/direction/lab-text.ts';
import { nextSeason } from '../../web/src/pages/seasons/season-dates.ts';
import { colourNumbers, percentText } from '../../web/src/parts/colour-text.ts';
import { numberOrNull } from '../../web/src/parts/number-text.ts';

describe('numbers in words', () => {
	it('a colour is told by lightness, chroma and hue, and a grey has no hue', () => {
		// sRGB red in CIELAB D65 (53.24, 80.09, 67.20): its LCh is 53.24, 104.55, 40.0 (Lindbloom's calculator gives the same).
		expect(colourNumbers([53.24, 80.09, 67.2])).toBe('L* 53, C* 105, h 40°');
		expect(colourNumbers([60, 0.5, -0.5])).toBe('L* 60, C* 1, h –');
	});

	it('a hue just under a full turn is told as 0, not 360', () => {
		expect(colourNumbers([50, 40, -0.1])).toBe('L* 50, C* 40, h 0°');
	});

	it('a tiny share is not told as nothing', () => {
		expect(percentText(0)).toBe('0 %');
		expect(percentText(0.001)).toBe('under 1 %');
		expect(percentText(0.125)).toBe('13 %');
	});

	it('a typed price may have a comma, and nonsense is no number', () => {
		expect(numberOrNull('12,50')).toBe(12.5);
		expect(numberOrNull('')).toBeNull();
		expect(numberOrNull('cheap')).toBeNull();
	});

	it('a colour is typed as three CIELAB numbers however they are parted', () => {
		expect(labFromText('62 4.5 -12')).toEqual([62, 4.5, -12]);
		expect(labFromText('62, 4.5; -12')).toEqual([62, 4.5, -12]);
		for (const wrong of ['62 4.5', '101 0 0', 'a b c', '62 4.5 -12 3', '']) expect(labFromText(wrong)).toBeNull();
	});
});

describe('the season to begin with', () => {
	const cases = [
		['2026-11-25', 'Winter 2026', '2026-12-01', '2027-02-28'],
		['2026-12-03', 'Spring 2027', '2027-03-01', '2027-05-31'],
		['2027-01-15', 'Spring 2027', '2027-03-01', '2027-05-31'],
		['2027-03-01', 'Summer 2027', '2027-06-01', '2027-08-31'],
		// 2028 is a leap year.
		['2027-10-10', 'Winter 2027', '2027-12-01', '2028-02-29'],
	] as const;
	for (const [today, name, startsOn, endsOn] of cases) {
		it(`on ${today} it is ${name}`, () => {
			expect(nextSeason(today)).toEqual({ name, startsOn, endsOn });
		});
	}
});
