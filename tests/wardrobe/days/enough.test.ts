import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enoughOf, servesOccasion } from '../../../src/wardrobe/days/enough.ts';
import { ownFullShare } from '../../../src/wardrobe/days/full-share.ts';
import { defaultSeason, neededPieces } from '../../../src/wardrobe/days/season-defaults.ts';
import { daysOfSeason } from '../../../src/wardrobe/days/usual-days.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import type { SeasonDays } from '../../../src/wardrobe/words/season.ts';
import { aGarment } from '../../support/build-wardrobe.ts';
import { daysWithoutClothes } from '../../support/wash-simulation.ts';

const spring = { startsOn: '2026-03-01', endsOn: '2026-05-31' };
const days = (changes: Partial<SeasonDays> = {}): SeasonDays => ({ ...daysOfSeason(spring), ...changes });
const some = (counts: Partial<Record<Kind, number>>) =>
	Object.entries(counts).flatMap(([kind, count]) =>
		Array.from({ length: count }, (_, index) => aGarment({ id: `${kind} ${index}`, kind: kind as Kind })),
	);

describe('enough to wear', () => {
	it.each([
		// Seven days to a wash: a shirt lasts one, trousers four, a dress two (common practice, no source).
		[{ shirt: 7, trousers: 2 }, 7],
		[{ shirt: 4, trousers: 2 }, 4],
		[{ shirt: 9, trousers: 1 }, 4],
		[{ shirt: 4, trousers: 1, dress: 1 }, 6],
		[{ cardigan: 3, trousers: 2 }, 0],
		[{ jumper: 2, trousers: 2 }, 7],
	] as [Partial<Record<Kind, number>>, number][])('%j last %i of 7 days', (counts, lasts) => {
		expect(enoughOf(some(counts), days())).toMatchObject({ askedDays: 7, dressedDays: lasts });
	});

	it('says how long each part lasts and what is short', () => {
		expect(enoughOf(some({ shirt: 5, trousers: 2, dress: 1 }), days()).sentence).toBe(
			'Between two washes, 7 days apart, the tops last 5 days, the bottoms 8 days, dresses and one-pieces 2 days: enough.',
		);
		expect(enoughOf(some({ shirt: 3, trousers: 2 }), days()).sentence).toContain(
			'4 days short. Wash sooner, or add another top.',
		);
	});

	it('does not dress five hikes from a set that dresses five office days', () => {
		const office = some({ shirt: 5, trousers: 2, heels: 1 }).filter(({ kind }) => kind !== 'heels');
		const five = (name: string, like: 'work' | 'outdoors') => days({ occasions: [{ name, like, daysAWeek: 5 }] });
		expect(enoughOf(office, five('office', 'work'))).toMatchObject({ askedDays: 5, dressedDays: 5 });
		expect(enoughOf(office, five('hikes', 'outdoors'))).toMatchObject({ askedDays: 5, dressedDays: 0 });
		const tagged = office.map((garment) => ({ ...garment, occasions: ['hikes'] }));
		expect(enoughOf(tagged, five('hikes', 'outdoors')).dressedDays).toBe(5);
		expect(servesOccasion(tagged[0]!, { name: 'office', like: 'work' })).toBe(false);
	});

	it('agrees with 90 days lived through, washing included, but for the last wash that 90 days cut short', () => {
		const count = fc.integer({ min: 0, max: 9 });
		const wardrobe = fc.record({
			shirt: count,
			't-shirt': count,
			trousers: fc.integer({ min: 0, max: 4 }),
			jeans: fc.integer({ min: 0, max: 3 }),
			dress: fc.integer({ min: 0, max: 3 }),
		});
		fc.assert(
			fc.property(wardrobe, fc.constantFrom(7, 14), fc.integer({ min: 0, max: 5 }), (counts, washEveryDays, work) => {
				const season = days({
					washEveryDays,
					occasions: [
						{ name: 'work', like: 'work', daysAWeek: work },
						{ name: 'walks', like: 'outdoors', daysAWeek: 7 - work },
					],
				});
				const garments = some(counts);
				const { askedDays, dressedDays } = enoughOf(garments, season);
				const cycles = Math.floor(90 / washEveryDays);
				expect(daysWithoutClothes(garments, season, cycles * washEveryDays)).toBe(
					cycles * Math.round(askedDays - dressedDays),
				);
				const all90 = daysWithoutClothes(garments, season, 90);
				expect(all90).toBeLessThanOrEqual((cycles + 1) * Math.round(askedDays - dressedDays));
			}),
			{ numRuns: 300, seed: 1 },
		);
	});

	it('agrees to the day where the days divide evenly', () => {
		for (const shirts of [3, 5, 7, 9])
			for (const trousers of [1, 2]) {
				const garments = some({ shirt: shirts, trousers });
				const { askedDays, dressedDays } = enoughOf(garments, days());
				expect(daysWithoutClothes(garments, days(), 91)).toBe(13 * (askedDays - dressedDays));
			}
	});
});

describe('the pieces a season needs', () => {
	it('last from one wash to the next, for any washing', () => {
		for (const washEveryDays of [3, 7, 14]) {
			const season = days({ washEveryDays });
			const need = neededPieces(season);
			const garments = some({ shirt: need.top - 2, trousers: need.bottom, dress: need.full });
			expect(enoughOf(garments, season)).toMatchObject({ dressedDays: washEveryDays });
			expect(daysWithoutClothes(garments, season, 90)).toBe(0);
		}
	});

	it('are where the quotas of a new season start', () => {
		const season = defaultSeason({ ...spring, id: 'a', name: 'A', addedAt: '' });
		expect(season.quotas).toEqual(neededPieces(daysOfSeason(season)));
		expect(season.targetCount).toBe(Object.values(season.quotas).reduce((sum, one) => sum + one, 0));
		expect(neededPieces(days({ coldDay: 14, warmDay: 28 })).outer).toBe(1);
		expect(neededPieces(days({ coldDay: 0 })).outer).toBe(3);
	});

	it('are no tights in summer, and dresses by what is owned', () => {
		const summer = defaultSeason({
			...spring,
			startsOn: '2026-06-01',
			endsOn: '2026-08-31',
			id: 'a',
			name: 'A',
			addedAt: '',
		});
		expect(summer.quotas).toMatchObject({ legwear: 0, full: 2, top: 7 });
		const owned = (kind: Kind, count: number) =>
			Array.from({ length: count }, (): { kind: Kind; place: 'rail' } => ({ kind, place: 'rail' }));
		expect(ownFullShare(owned('trousers', 7))).toBeNull();
		expect(ownFullShare(owned('trousers', 8))).toBe(0);
		expect(ownFullShare([...owned('skirt', 8), ...owned('dress', 8)])).toBe(0.5);
		expect(neededPieces(days(), 0)).toMatchObject({ full: 0, bottom: 4 });
		expect(neededPieces(days(), 0.5)).toMatchObject({ full: 2, bottom: 3 });
	});
});
