import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatedBoard, generatedWardrobe } from '../../../bench/generated-wardrobe.ts';
import { defaultSeason, yearPartOf } from '../../../src/wardrobe/days/season-defaults.ts';
import { derivePalette } from '../../../src/wardrobe/palette/palette.ts';
import { seasonReport } from '../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { EMPTY_PALETTE } from '../../../src/wardrobe/words/palette-colour.ts';
import type { SeasonInput } from '../../../src/wardrobe/words/season-input.ts';
import { aCandidate, aSeasonInput, aWish } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const board = (count: number) =>
	generatedBoard(count, 'board').map((reading, index) => ({
		inspiration: { id: `i${index}`, seasonId: 'spring', photoId: `p${index}`, title: '', group: '', addedAt: '' },
		reading,
	}));

/** Every number anywhere in it. */
function numbersIn(value: unknown): number[] {
	if (typeof value === 'number') return [value];
	return value && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

/** A report that is sound: only finite numbers, and no sentence with a value that was not there. */
function soundReport(input: SeasonInput) {
	const report = seasonReport(input);
	expect(numbersIn(report).filter((number) => !Number.isFinite(number))).toEqual([]);
	const text = JSON.stringify(report);
	expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
	expect(JSON.parse(text)).toEqual(report);
	return report;
}

describe("the season's report", () => {
	it('of an empty season is made of plain sentences', () => {
		const report = soundReport(aSeasonInput({ palette: { colours: [] } }));
		expect(report.held.sentence).toBe('Nothing is on the rail yet.');
		expect(report.lookBack.sentence).toContain('nothing can be said');
		expect(report.stations.map(({ state }) => state)).toEqual(['empty', 'empty', 'empty', 'empty', 'empty', 'empty']);
		expect(report.garments).toEqual([]);
		expect(report.caution).toContain('is not the cloth');
	});

	it('of awkward wardrobes stays sound', () => {
		const one = aGarment({ id: 'one', kind: 'dress', lab: RUST });
		const cases: Partial<SeasonInput>[] = [
			{ inspirations: [], garments: generatedWardrobe(20, 'no board') },
			{ garments: [one] },
			{ garments: [one], palette: { colours: [] } },
			{ garments: Array.from({ length: 12 }, (_, n) => aGarment({ id: `same ${n}`, lab: OAT })) },
			{ garments: [aGarment({ id: 'no colours', swatches: [] })] },
			{ garments: [{ ...one, price: 0 }], wears: [{ garmentId: 'one', on: '2026-01-01' }] },
			{ garments: [{ ...one, boughtOn: '2031-01-01' }], wears: [{ garmentId: 'one', on: '2031-01-02' }] },
			{ wishes: [aWish({ wantedSince: '2031-01-01', priceLimit: 0, target: null, paletteColourId: null })] },
			{ garments: [one], lineUp: { seasonId: 'spring', garmentIds: ['no such'], mustKeep: [], neverUse: [] } },
			{ garments: (['rail', 'stored', 'leaving', 'gone'] as const).map((place) => ({ ...one, id: place, place })) },
			{ candidates: [aCandidate()], inspirations: board(1) },
		];
		for (const changes of cases) soundReport(aSeasonInput(changes));
	});

	it('of any wardrobe is sound, and the order of the garments changes nothing', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 40 }),
				fc.integer({ min: 0, max: 8 }),
				fc.string(),
				(count, pictures, seed) => {
					const inspirations = board(pictures);
					const palette = derivePalette(inspirations.map(({ reading }) => reading));
					const garments = generatedWardrobe(count, seed);
					const wears = garments.filter((_, n) => n % 3 === 0).map(({ id }) => ({ garmentId: id, on: '2026-02-02' }));
					const report = soundReport(aSeasonInput({ palette, inspirations, garments, wears, wishes: [aWish()] }));
					const turned = seasonReport(
						aSeasonInput({ palette, inspirations, garments: [...garments].reverse(), wears, wishes: [aWish()] }),
					);
					expect(turned).toEqual(report);
				},
			),
			{ numRuns: 25, seed: 1 },
		);
	});

	it('tells of each garment fit, partners, wears and what to do, best fit first', () => {
		const garments = [
			aGarment({ id: 'lime shirt', kind: 'shirt', lab: [85, -40, 75] }),
			aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
			aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
			aGarment({ id: 'gone', place: 'gone' }),
		];
		const report = soundReport(aSeasonInput({ garments }));
		expect(report.garments.map(({ garmentId }) => garmentId)).toEqual(['ink trousers', 'oat shirt', 'lime shirt']);
		const [ink] = report.garments;
		expect(ink).toMatchObject({ slot: 'bottom', partnerCount: 2, fit: { verdict: 'fits' }, wear: { wears: 0 } });
		expect(ink!.partners[0]).toMatchObject({ garmentId: 'oat shirt' });
		expect(report.needs.find(({ slot }) => slot === 'top')).toEqual({ slot: 'top', wanted: 10, held: 2 });
		// Two tops with the trousers; nobody's shoes are known.
		expect(report.held).toMatchObject({ garments: 3, outfits: { likely: 2 }, isLineUp: false });
		expect(report.held.sentence).toContain('No shoes are among them');
		expect(report.held.sentence).toMatch(/They cover \d+ % of the palette/);
		const without = soundReport(aSeasonInput({ garments, palette: EMPTY_PALETTE }));
		expect(without.held.sentence).not.toContain('palette');
	});

	it('counts only the line-up once one is chosen', () => {
		const garments = [
			aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
			aGarment({ id: 'ink shirt', kind: 'shirt', lab: INK }),
			aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
			aGarment({ id: 'gone shoes', kind: 'shoes', place: 'gone' }),
		];
		const lineUp = {
			seasonId: 'spring',
			garmentIds: ['oat shirt', 'ink trousers', 'gone shoes'],
			mustKeep: [],
			neverUse: [],
		};
		expect(soundReport(aSeasonInput({ garments, lineUp })).held).toMatchObject({
			garments: 2,
			outfits: { likely: 1 },
			isLineUp: true,
		});
	});

	it("brings back last year's notes and what was missed then", () => {
		const last = {
			...aSeasonInput().season,
			name: 'Spring 2025',
			notes: 'more rain',
			feltGaps: ['a dry pair of shoes'],
		};
		const report = soundReport(aSeasonInput({ lastYear: { season: last, palette: aSeasonInput().palette } }));
		expect(report.lastYearNotes).toEqual({
			seasonName: 'Spring 2025',
			notes: 'more rain',
			feltGaps: ['a dry pair of shoes'],
		});
		expect(report.paletteChange).not.toBeNull();
		expect(soundReport(aSeasonInput()).lastYearNotes).toBeNull();
	});

	it('follows the season from station to station', () => {
		const garments = [aGarment({ id: 'a', lab: OAT, sortedFor: ['spring'] }), aGarment({ id: 'b', place: 'stored' })];
		const lineUp = { seasonId: 'spring', garmentIds: ['a'], mustKeep: [], neverUse: [] };
		const wears = [{ garmentId: 'a', on: '2026-03-01' }];
		const full = aSeasonInput({
			garments,
			lineUp,
			wears,
			wishes: [aWish()],
			candidates: [aCandidate()],
			inspirations: board(1),
		});
		expect(soundReport(full).stations).toEqual([
			{ station: 'look-back', state: 'done', sentence: '1 wear' },
			{ station: 'direction', state: 'done', sentence: '4 colours from 1 picture' },
			{ station: 'sort', state: 'open', sentence: '1 of 2 decided' },
			{ station: 'line-up', state: 'open', sentence: '1 of 33 chosen' },
			{ station: 'wish-list', state: 'done', sentence: expect.stringMatching(/^1 wish, \d+ gaps$/) },
			{ station: 'shop', state: 'open', sentence: '1 piece in view' },
		]);
	});

	it('takes Sort for done once every garment that is asked about was decided on in this season', () => {
		const sortOf = (...garments: Garment[]) =>
			soundReport(aSeasonInput({ garments })).stations.find(({ station }) => station === 'sort')!;
		const decided = aGarment({ id: 'a', sortedFor: ['spring'] });
		expect(sortOf(decided)).toMatchObject({ state: 'done', sentence: '1 of 1 decided' });
		expect(sortOf(decided, aGarment({ id: 'b', basic: true })).state).toBe('done');
		expect(sortOf(decided, aGarment({ id: 'b', sortedFor: ['another'] })).state).toBe('open');
		expect(sortOf(aGarment({ id: 'b', basic: true }))).toMatchObject({
			state: 'empty',
			sentence: 'nothing to sort yet',
		});
	});

	it('tells of no gaps while there are no garments: of nothing, everything is missing', () => {
		const wishes = soundReport(aSeasonInput({ garments: [] })).stations.find(({ station }) => station === 'wish-list');
		expect(wishes).toEqual({ station: 'wish-list', state: 'empty', sentence: '0 wishes' });
	});
});

describe('a new season', () => {
	it('starts from what such a season needs', () => {
		const dates = { id: 's', name: 'S', startsOn: '2026-12-01', endsOn: '2027-02-28', addedAt: '2026-11-01' };
		const winter = defaultSeason(dates);
		expect(winter).toMatchObject({ yearPart: 'winter', archived: false });
		expect(Object.values(winter.quotas).reduce((sum, count) => sum + count, 0)).toBe(winter.targetCount);
		expect(defaultSeason({ ...dates, yearPart: 'summer' })).toMatchObject({ yearPart: 'summer' });
	});

	it('lies in the part of the year that holds its middle', () => {
		expect(yearPartOf('2026-03-01', '2026-05-31')).toBe('spring');
		expect(yearPartOf('2026-06-01', '2026-08-31')).toBe('summer');
		expect(yearPartOf('2026-09-01', '2026-11-30')).toBe('autumn');
		expect(yearPartOf('2026-11-15', '2027-03-15')).toBe('winter');
	});
});
