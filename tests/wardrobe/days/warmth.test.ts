import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isInSeason, outOfSeason } from '../../../src/wardrobe/days/in-season.ts';
import { cloOf, UNDERWEAR_CLO } from '../../../src/wardrobe/days/insulation.ts';
import { daysOfSeason, offeredDays } from '../../../src/wardrobe/days/usual-days.ts';
import { comfortableClo, indoorRange, outerNeed, wornIndoorsClo } from '../../../src/wardrobe/days/warmth-need.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import { aGarment } from '../../support/build-wardrobe.ts';

/** Insulation of clothes worn together: the sum of the garments' (ASHRAE 55 section 5.2.2.2), underwear counted in. */
const outfitClo = (garments: readonly Parameters<typeof cloOf>[0][]): number =>
	garments.reduce((sum, garment) => sum + cloOf(garment), UNDERWEAR_CLO);

type Ensemble = {
	readonly what: string;
	readonly kinds: readonly Kind[];
	readonly thinner: readonly Kind[];
	readonly clo: number;
};
const { ensembles } = JSON.parse(readFileSync('fixtures/clothing-insulation.json', 'utf8')) as {
	readonly ensembles: readonly Ensemble[];
};

const climate = JSON.parse(readFileSync('fixtures/monthly-temperatures.json', 'utf8')) as {
	readonly minimum: readonly number[];
	readonly maximum: readonly number[];
};

const winter = { yearPart: 'winter', startsOn: '2026-12-01', endsOn: '2027-02-28' } as const;
const summer = { yearPart: 'summer', startsOn: '2026-06-01', endsOn: '2026-08-31' } as const;

describe('the insulation of clothes', () => {
	// The tables measure whole ensembles on a mannequin; sums of garments differ from them by up to 0.2 clo (both standards say "about").
	it.each(ensembles)('of "$what" comes near the published $clo clo', ({ kinds, thinner, clo }) => {
		const worn = kinds.map((kind) => ({ kind, warmth: thinner.includes(kind) ? (0 as const) : null }));
		expect(Math.abs(outfitClo(worn) - clo)).toBeLessThanOrEqual(0.2);
	});

	it('orders the published ensembles as they are, where they differ by 0.1 clo or more', () => {
		const sums = ensembles.slice(0, 7).map(({ kinds, thinner, clo }) => ({
			clo,
			sum: outfitClo(kinds.map((kind) => ({ kind, warmth: thinner.includes(kind) ? (0 as const) : null }))),
		}));
		for (const one of sums)
			for (const other of sums) if (other.clo - one.clo >= 0.15) expect(other.sum).toBeGreaterThan(one.sum);
	});

	it('follows what the user says of a garment, by a quarter a step', () => {
		expect(cloOf({ kind: 'jumper', warmth: null })).toBeCloseTo(0.28, 9);
		expect(cloOf({ kind: 'trousers', warmth: 2 })).toBeCloseTo(0.3, 9);
		expect(cloOf({ kind: 'dress', warmth: 0 })).toBeLessThan(cloOf({ kind: 'dress', warmth: 3 }));
	});
});

describe('what the weather asks', () => {
	it('is 1 clo for somebody at rest at 21 degrees, as the clo was defined (Gagge, Burton and Bazett 1941)', () => {
		// Still air around somebody indoors: 0.75 clo (Burton and Edholm 1955, from memory).
		expect(comfortableClo(21, 1, 0.75)).toBeCloseTo(1, 1);
	});

	it.each([
		// ASHRAE 55-2020 5.2.2.2 as pythermalcomfort's clo_tout gives it: 0.46 at 27 and 0.47 at 25 degrees (its own documentation).
		[27, 0.46],
		[25, 0.47],
		[5, 0.64],
		[-5, 1],
		[-20, 1],
	])('at %f degrees outdoors people wear about %f clo indoors', (celsius, clo) => {
		expect(wornIndoorsClo(celsius)).toBeCloseTo(clo, 2);
	});

	it('needs a coat in winter, a jacket in spring and none in summer', () => {
		const need = (season: Parameters<typeof daysOfSeason>[0]) => outerNeed(daysOfSeason(season));
		expect(need(winter)).toBeGreaterThan(cloOf({ kind: 'jacket', warmth: null }));
		expect(need(winter)).toBeLessThanOrEqual(cloOf({ kind: 'coat', warmth: null }));
		expect(need({ startsOn: '2026-03-01', endsOn: '2026-05-31' })).toBeLessThanOrEqual(0.35);
		expect(need(summer)).toBe(0);
	});

	it('keeps shorts with a T-shirt out of winter, and a thick jumper over a shirt out of summer', () => {
		const clo = (kinds: readonly Kind[]) => outfitClo(kinds.map((kind) => ({ kind, warmth: null })));
		const [cold, hot] = [indoorRange(daysOfSeason(winter)), indoorRange(daysOfSeason(summer))];
		expect(clo(['t-shirt', 'shorts', 'sandals'])).toBeLessThan(cold.least);
		expect(clo(['shirt', 'jumper', 'trousers', 'boots'])).toBeGreaterThan(cold.least);
		expect(clo(['shirt', 'jumper', 'trousers', 'boots'])).toBeLessThan(cold.most);
		expect(clo(['shirt', 'hoodie', 'trousers', 'boots', 'jumper'])).toBeGreaterThan(hot.most);
		expect(clo(['t-shirt', 'shorts', 'sandals'])).toBeGreaterThan(hot.least);
	});
});

describe('the days offered for a season', () => {
	it('are those of its months', () => {
		// Mean maxima of June to August at Heathrow, 1991 to 2020: 21.6, 23.9 and 23.4 (Met Office, quoted in a public weather forum).
		expect(offeredDays(summer).warmDay).toBeCloseTo(23.9, 0);
		expect(offeredDays(winter)).toEqual({ coldDay: 3, warmDay: 9 });
		expect(offeredDays({ startsOn: '2026-11-15', endsOn: '2027-01-10' })).toEqual({ coldDay: 3, warmDay: 11 });
		expect(offeredDays({ startsOn: 'never', endsOn: '' })).toEqual({ coldDay: 3, warmDay: 24 });
	});

	// A published climate table, from memory (see the fixture): what is offered for a season must be its coldest minimum and its warmest maximum.
	it.each([
		['spring', '2026-03-01', '2026-05-31', [2, 3, 4]],
		['summer', '2026-06-01', '2026-08-31', [5, 6, 7]],
		['autumn', '2026-09-01', '2026-11-30', [8, 9, 10]],
		['winter', '2025-12-01', '2026-02-28', [11, 0, 1]],
	])('are within a degree of the table for %s', (_, startsOn, endsOn, months) => {
		const { coldDay, warmDay } = offeredDays({ startsOn, endsOn });
		expect(Math.abs(coldDay - Math.min(...months.map((month) => climate.minimum[month]!)))).toBeLessThanOrEqual(1);
		expect(Math.abs(warmDay - Math.max(...months.map((month) => climate.maximum[month]!)))).toBeLessThanOrEqual(1);
	});

	it('give way to what the user names', () => {
		const days = { ...daysOfSeason(winter), coldDay: -12 };
		expect(daysOfSeason({ ...winter, days }).coldDay).toBe(-12);
	});
});

describe('a garment of another part of the year', () => {
	it.each([
		['shorts', {}, winter, false],
		['shorts', {}, summer, true],
		['sandals', {}, winter, false],
		['coat', {}, summer, false],
		['coat', {}, winter, true],
		['t-shirt', {}, winter, true],
		['dress', { warmth: 3 }, summer, false],
		['trousers', { warmth: 0 }, winter, false],
		['shorts', { yearParts: ['winter'] }, winter, true],
		['shirt', { yearParts: ['summer'] }, winter, false],
		['coat', { basic: true }, summer, true],
	] as const)('%s %j in %o: %s', (kind, changes, season, isIn) => {
		expect(isInSeason(aGarment({ id: 'it', kind, ...changes } as Parameters<typeof aGarment>[0]), season)).toBe(isIn);
	});

	it('says why in half a sentence', () => {
		expect(outOfSeason(aGarment({ id: 'it', kind: 'shorts' }), winter)).toBe(
			'it is for days of 21 degrees or more, and a warm day of the season has 9',
		);
		expect(outOfSeason(aGarment({ id: 'it', yearParts: ['summer'] }), winter)).toBe('it is for summer, not winter');
	});
});
