import { beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { lightOf } from '../../src/reading/light/light.ts';
import { type ChartPhoto, chartPhotos, meanOf, medianOf } from '../support/known-photos.ts';

/**
 * Photos of the 24-patch chart, made from its published spectra (mean of 30 charts, BabelColor 2012) under CIE illuminants A, D50, D65, FL2, FL11
 * and LED-B3 (CIE 15) through invented cameras: fixtures/charts. They have no phone's curve, and files so small are read as a camera's; what real phones do is told
 * by tests/standards/real-charts.test.ts.
 */
const errorsOf = ({ patches }: ChartPhoto, correct: (lab: Lab65) => Lab65): number[] =>
	patches.map(({ seen, truth }) => deltaE2000(correct(seen), truth));

let charts: readonly ChartPhoto[];
beforeAll(async () => {
	charts = await chartPhotos(false);
});

const pointed = ({ pixels, labels, neutral }: ChartPhoto) =>
	lightOf(
		{ pixels, labels, camera: 'camera', cloth: [] },
		{ neutrals: [{ x: neutral.x, y: neutral.y, lightness: neutral.lab[0] }] },
		null,
	);

describe('the light of chart photos', () => {
	it('is right to 3.5 CIEDE2000 in the median colour where the user points at the white patch', () => {
		const errors = charts.flatMap((chart) => errorsOf(chart, pointed(chart).correct));
		expect(medianOf(errors)).toBeLessThanOrEqual(3.5);
		expect(meanOf(errors)).toBeLessThan(4);
	});

	it('takes the white patch under each of the six lamps for what it is, whatever cast the camera left', () => {
		for (const chart of charts) expect(pointed(chart).light.source, chart.file).toBe('neutral-pointed');
	});
});
