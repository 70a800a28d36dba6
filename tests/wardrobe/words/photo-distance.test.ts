import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { correctedBy, UNTOLD_PHONE } from '../../../src/reading/light/light-model.ts';
import { modelFromNeutrals } from '../../../src/reading/light/neutral-model.ts';
import { distanceAcrossPhotos, distanceToPalette } from '../../../src/wardrobe/words/photo-distance.ts';
import { LIGHT_GREY_PATCH, neutralOf, realCharts, WHITE_PATCH } from '../../support/real-charts.ts';

/** 8 real phone photos of a chart (fixtures/reference/real-charts.csv): the same patch in two photos is one cloth, two patches are two. */
const phones = realCharts().filter(({ camera }) => camera === 'phone');
const untold = phones.map(({ seen }) => seen.map(correctedBy(UNTOLD_PHONE)));
const told = phones.map((chart) => {
	const neutrals = { white: neutralOf(chart, WHITE_PATCH), grey: neutralOf(chart, LIGHT_GREY_PATCH) };
	return chart.seen.map(correctedBy(modelFromNeutrals(neutrals, 'phone', chart.surround)));
});

/** Distances of equal and of different patches over all pairs of photos. */
function distances(photos: readonly Lab65[][], distance: (one: Lab65, other: Lab65) => number) {
	const [same, different]: [number[], number[]] = [[], []];
	for (const [i, one] of photos.entries()) {
		for (const other of photos.slice(i + 1)) {
			for (const [p, a] of one.entries())
				for (const [q, b] of other.entries()) (p === q ? same : different).push(distance(a, b));
		}
	}
	return { same: same.sort((a, b) => a - b), different };
}

/** Share of different patches that a rule takes for the same when it recognises `found` of the same ones. */
function mistaken(photos: readonly Lab65[][], distance: (one: Lab65, other: Lab65) => number, found: number): number {
	const { same, different } = distances(photos, distance);
	const within = same[Math.floor(found * (same.length - 1))]!;
	return different.filter((one) => one <= within).length / different.length;
}

const plain = (one: Lab65, other: Lab65) => distanceAcrossPhotos(one, other, [{}, {}]);
const weighted = (one: Lab65, other: Lab65) => distanceAcrossPhotos(one, other, [{ untold: true }, {}]);

describe('the distance of two colours of two photos', () => {
	it('with lightness weighted takes far fewer for the same that are not, where nothing tells the light', () => {
		expect(mistaken(untold, weighted, 0.8)).toBeLessThanOrEqual(0.65 * mistaken(untold, plain, 0.8));
	});

	it('is best left plain where neutrals tell the light of both', () => {
		expect(mistaken(told, plain, 0.8)).toBeLessThanOrEqual(mistaken(told, weighted, 0.8));
		expect(mistaken(told, plain, 0.8)).toBeLessThan(0.02);
	});

	it('is the same both ways, and 0 for one colour', () => {
		const [a, b]: Lab65[] = [
			[40, 10, -20],
			[60, 12, -25],
		];
		expect(weighted(a!, b!)).toBeCloseTo(weighted(b!, a!), 12);
		expect(weighted(a!, a!)).toBe(0);
		expect(weighted(a!, b!)).toBeLessThan(plain(a!, b!));
	});
});

describe('the distance of a photo to a palette colour', () => {
	it('is CIEDE2000 where the light is told, and counts lightness 1.3 times less where nothing tells it', () => {
		const [grey, lighter, redder]: Lab65[] = [
			[50, 0, 0],
			[60, 0, 0],
			[50, 10, 0],
		];
		expect(distanceToPalette(grey!, lighter!, false)).toBeCloseTo(deltaE2000(grey!, lighter!), 9);
		expect(distanceToPalette(grey!, lighter!, true)).toBeCloseTo(deltaE2000(grey!, lighter!) / 1.3, 9);
		expect(distanceToPalette(grey!, redder!, true)).toBeCloseTo(deltaE2000(grey!, redder!), 9);
	});
});
