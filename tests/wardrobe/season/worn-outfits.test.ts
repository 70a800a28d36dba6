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
		expect(unworn.map(({ garmentIds, why }) => [...garmentIds, why])).toEqual([
			['rust shirt', null],
			['shorts', 'season'],
		]);
		expect(unworn[1]!.sentence).toBe('shorts: not worn yet; it is for summer, not spring. Its time is still to come.');
	});

	it('says a reason once for all that share it, and leaves each its own advice where that names another garment', () => {
		const early = [...garments, aGarment({ id: 'oat jumper', kind: 'jumper', lab: OAT })];
		const unworn = (more: typeof garments) =>
			seasonReport(
				aSeasonInput({ garments: more, wears: worn('2026-01-01', 'oat shirt', 'ink trousers', 'teal skirt') }),
			).wornOutfits.neverWorn;
		expect(unworn(early)[0]).toEqual({
			garmentIds: ['oat jumper', 'rust shirt'],
			why: null,
			sentence: 'Not worn yet, though something on the rail goes with each: oat jumper; rust shirt. Try them.',
		});
		const skis = aGarment({ id: 'ski trousers', kind: 'trousers', lab: INK, yearParts: ['winter'] });
		expect(unworn([...garments, skis]).at(-1)!.sentence).toBe(
			'Not worn yet, since their time is still to come: shorts; ski trousers.',
		);
	});

	it('names a stored partner where nothing on the rail goes with a piece', () => {
		const lime = aGarment({ id: 'lime skirt', kind: 'skirt', lab: [85, -40, 75] });
		const stored = aGarment({ id: 'lime top', kind: 'top', lab: [85, -40, 75], place: 'stored' });
		const input = aSeasonInput({
			garments: [garments[1]!, lime, stored],
			wears: worn('2026-01-01', 'ink trousers', 'lime top'),
			pairWords: [{ garmentA: 'lime skirt', garmentB: 'lime top', word: 'approved' }],
		});
		expect(seasonReport(input).wornOutfits.neverWorn.map(({ sentence }) => sentence)).toEqual([
			'lime skirt: not worn, perhaps because nothing on the rail is known to go with it. lime top does, and is stored: bring it back.',
		]);
	});

	it('does not excuse by the season what was not worn in a whole year', () => {
		const old = garments.map((garment) => ({ ...garment, addedAt: '2024-01-01T00:00:00Z' }));
		const wears = worn('2025-02-01', 'oat shirt', 'ink trousers', 'teal skirt');
		const unworn = (since: string) =>
			seasonReport(aSeasonInput({ garments: old, wears: [...wears, ...worn(since, 'oat shirt')] })).wornOutfits
				.neverWorn;
		expect(unworn('2025-02-01').find(({ garmentIds }) => garmentIds.includes('shorts'))).toMatchObject({
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
