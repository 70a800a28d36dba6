import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { correctedBy } from '../../../src/reading/light/light-model.ts';
import { modelFromNeutrals } from '../../../src/reading/light/neutral-model.ts';
import { appearanceOf } from '../../../src/wardrobe/words/appearance.ts';
import { jointSwatches } from '../../../src/wardrobe/words/joint-swatches.ts';
import { type Joinable, jointTrust } from '../../../src/wardrobe/words/joint-trust.ts';
import { aReading, aSwatch, RUST } from '../../support/build-wardrobe.ts';
import { meanOf } from '../../support/known-photos.ts';
import { neutralOf, realCharts, WHITE_PATCH } from '../../support/real-charts.ts';

const photo = (error: number, takenAt: string | null = null): Joinable => ({
	trust: { error, reasons: ['one'], advice: null },
	takenAt,
});
const DAY = '2026-03-01T10:00:00';
const NEXT_DAY = '2026-03-02T10:00:00';
const SOON_AFTER = '2026-03-01T10:04:00';

describe('the trust of several photos of one piece', () => {
	it('grows with each further light, and says so', () => {
		const two = jointTrust([photo(8, DAY), photo(8, NEXT_DAY)]);
		expect(two.error).toBeLessThan(7);
		expect(two.reasons[0]).toContain('2 photos in 2 lights');
		expect(jointTrust([photo(8, DAY), photo(8, NEXT_DAY), photo(8, '2026-05-01T10:00:00')]).error).toBeLessThan(
			two.error,
		);
	});

	it('does not grow where they were taken in one go, or do not tell when', () => {
		expect(jointTrust([photo(8, DAY), photo(8, SOON_AFTER)]).error).toBe(8);
		expect(jointTrust([photo(8), photo(8)]).error).toBe(8);
	});

	it('is never worse than the mean of them, never better than independent photos allow, whatever their order', () => {
		const error = fc.double({ min: 1, max: 20, noNaN: true });
		const time = fc.option(
			fc.integer({ min: 0, max: 1000 }).map((hours) => new Date(hours * 3_600_000).toISOString().slice(0, 19)),
		);
		fc.assert(
			fc.property(fc.array(fc.tuple(error, time), { minLength: 1, maxLength: 6 }), (drawn) => {
				const photos = drawn.map(([one, at]) => photo(one, at));
				const joint = jointTrust(photos).error;
				const errors = drawn.map(([one]) => one);
				expect(joint).toBeLessThanOrEqual(meanOf(errors) + 0.06);
				const independent = 1 / Math.sqrt(errors.reduce((sum, one) => sum + 1 / one ** 2, 0));
				expect(joint).toBeGreaterThanOrEqual(independent - 0.06);
				expect(jointTrust([...photos].reverse()).error).toBeCloseTo(joint, 6);
			}),
		);
	});
});

describe('real phone photos joined', () => {
	/** 8 phone photos of a chart in 8 lights, each corrected by its white: fixtures/reference/real-charts.csv. */
	const charts = realCharts()
		.filter(({ camera }) => camera === 'phone')
		.map((chart) => {
			const model = modelFromNeutrals({ white: neutralOf(chart, WHITE_PATCH), grey: null }, 'phone', chart.surround);
			return { labs: chart.seen.map(correctedBy(model)), truth: chart.truth };
		});
	const STATED = 8.2;
	const pairs = charts.flatMap((one, i) => charts.slice(i + 1).map((other) => [one, other] as const));
	const joinedErrors = pairs.map(([one, other]) =>
		meanOf(
			one.labs.map((lab, patch) => {
				const photos = [lab, other.labs[patch]!].map((seen, at) => ({
					swatches: [{ lab: seen, share: 1 }],
					...photo(STATED, at === 0 ? DAY : NEXT_DAY),
				}));
				return deltaE2000(jointSwatches(photos)[0]!.lab, one.truth[patch]!);
			}),
		),
	);

	it('two by two come nearer to the truth than one by one, by about a fifth', () => {
		const single = meanOf(
			charts.map(({ labs, truth }) => meanOf(labs.map((lab, patch) => deltaE2000(lab, truth[patch]!)))),
		);
		expect(meanOf(joinedErrors)).toBeLessThanOrEqual(0.87 * single);
	});

	it('state an error that covers at least three pairs in four', () => {
		const stated = jointTrust([photo(STATED, DAY), photo(STATED, NEXT_DAY)]).error;
		expect(stated).toBeLessThan(STATED);
		expect(meanOf(joinedErrors.map((error) => (error <= stated ? 1 : 0)))).toBeGreaterThanOrEqual(0.75);
	});
});

describe('a garment from several photos', () => {
	it('has one colour where each photo errs within what it states, nearer to the surer one', () => {
		const sure = aReading([aSwatch(RUST, 1, 'top')], { trust: { error: 4, reasons: [], advice: null }, takenAt: DAY });
		const other = aReading([aSwatch([53, 41, 44], 1, 'top')], {
			trust: { error: 8, reasons: [], advice: null },
			takenAt: NEXT_DAY,
		});
		const { swatches, trust } = appearanceOf('shirt', [sure, other]);
		expect(swatches).toHaveLength(1);
		expect(swatches[0]!.lab[0]).toBeCloseTo(45 + 8 / 5, 9);
		expect(trust.error).toBeLessThan(4.5);
	});
});
