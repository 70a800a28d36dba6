import { describe, expect, it } from 'vitest';
import { wornTogether } from '../../../src/wardrobe/pairs/worn-together.ts';

const onDays = (days: Readonly<Record<string, string>>) =>
	Object.entries(days).flatMap(([on, ids]) => [...ids].map((garmentId) => ({ garmentId, on })));

describe('garments worn together', () => {
	it('are every two of a day, with the number of such days', () => {
		const wears = onDays({ '2026-03-01': 'abc', '2026-03-02': 'ab', '2026-03-03': 'c' });
		const expected = [
			{ garmentA: 'a', garmentB: 'b', days: 2 },
			{ garmentA: 'a', garmentB: 'c', days: 1 },
			{ garmentA: 'b', garmentB: 'c', days: 1 },
		];
		expect(wornTogether(wears)).toEqual(expected);
		expect(wornTogether(wears.toReversed())).toEqual(expected);
	});

	it('are none of a garment noted twice on one day, nor of different days', () => {
		expect(wornTogether(onDays({ '2026-03-01': 'aa', '2026-03-02': 'b' }))).toEqual([]);
	});
});
