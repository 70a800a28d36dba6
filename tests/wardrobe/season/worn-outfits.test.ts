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
				garmentIds: ['oat shirt', 'ink trousers'],
				days: 2,
				sentence: 'oat shirt with ink trousers: worn on 2 days. An outfit that works.',
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
		expect(unworn[1]!.sentence).toBe('shorts: not worn yet; it is for summer, not spring. Its time is still to come.');
	});

	it('does not excuse by the season what was not worn in a whole year', () => {
		const old = garments.map((garment) => ({ ...garment, addedAt: '2024-01-01T00:00:00Z' }));
		const wears = worn('2025-02-01', 'oat shirt', 'ink trousers', 'teal skirt');
		const unworn = (since: string) =>
			seasonReport(aSeasonInput({ garments: old, wears: [...wears, ...worn(since, 'oat shirt')] })).wornOutfits
				.neverWorn;
		expect(unworn('2025-02-01').find(({ garmentId }) => garmentId === 'shorts')).toMatchObject({
			why: 'season-passed',
			sentence: 'shorts: not worn for a whole year, its own season included (it is for summer, not spring). Let it go?',
		});
	});

	it('tells each favourite once, not one jumper with everything', () => {
		const favourites = ['jumper', 'one', 'two', 'three'].map((id) =>
			aGarment({ id, kind: id === 'jumper' ? 'jumper' : 'shirt', lab: OAT, loved: 3 }),
		);
		const trousers = aGarment({ id: 'trousers', kind: 'trousers', lab: INK, loved: 3 });
		const socks = aGarment({ id: 'socks', kind: 'socks', lab: INK, loved: 3 });
		const { neverCombined } = seasonReport(
			aSeasonInput({ garments: [...favourites, trousers, socks], wears: worn('2026-01-01', 'one') }),
		).wornOutfits;
		const named = neverCombined.flatMap(({ garmentIds }) => garmentIds);
		expect(new Set(named).size).toBe(named.length);
		expect(neverCombined.length).toBeGreaterThan(1);
		expect(named).not.toContain('socks');
	});

	it('says nothing where no wears are noted', () => {
		expect(told([])).toEqual({ wornAgain: [], neverCombined: [], neverWorn: [] });
	});
});
