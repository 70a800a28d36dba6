import { describe, expect, it } from 'vitest';
import { seasonReport } from '../../../src/wardrobe/season/report.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT, loved: 3 }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'teal skirt', kind: 'skirt', lab: TEAL, loved: 3 }),
	aGarment({ id: 'shorts', kind: 'shorts', lab: INK, yearParts: ['summer'] }),
	aGarment({ id: 'rust shirt', kind: 'shirt', lab: RUST }),
];
const worn = (day: string, ...ids: string[]) => ids.map((garmentId) => ({ garmentId, on: day }));
const told = (wears: ReturnType<typeof worn>) => seasonReport(aSeasonInput({ garments, wears })).wornOutfits;

describe('what the wears say of outfits', () => {
	const days = [
		...worn('2026-01-01', 'oat shirt', 'ink trousers'),
		...worn('2026-01-05', 'ink trousers', 'oat shirt'),
		...worn('2026-02-01', 'teal skirt', 'rust shirt'),
	];

	it('finds the outfits worn again and again', () => {
		expect(told(days).wornAgain).toEqual([
			{
				garmentIds: ['ink trousers', 'oat shirt'],
				days: 2,
				sentence: 'ink trousers with oat shirt: worn on 2 days. An outfit that works.',
			},
		]);
	});

	it('finds favourites that go together and were never combined, until they are', () => {
		expect(told(days).neverCombined.map(({ garmentIds }) => garmentIds)).toEqual([['oat shirt', 'teal skirt']]);
		expect(told([...days, ...worn('2026-03-01', 'oat shirt', 'teal skirt')]).neverCombined).toEqual([]);
	});

	it('says why something may not have been worn', () => {
		const unworn = told(worn('2026-01-01', 'oat shirt', 'ink trousers', 'teal skirt')).neverWorn;
		expect(unworn.map(({ garmentId, why }) => [garmentId, why])).toEqual([
			['rust shirt', null],
			['shorts', 'season'],
		]);
		expect(unworn[1]!.sentence).toBe('shorts was not worn: it is for summer, not spring.');
	});

	it('says nothing where no wears are noted', () => {
		expect(told([])).toEqual({ wornAgain: [], neverCombined: [], neverWorn: [] });
	});
});
