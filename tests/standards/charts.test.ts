import { beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { type Lab65, labFromXyz, xyzFromLab } from '../../src/colour/lab65.ts';
import { patchColour } from '../../src/reading/light/eyedropper.ts';
import { correctionToWhite, lightOf } from '../../src/reading/light/light.ts';
import { type ChartPhoto, chartPhotos, meanOf, medianOf } from '../support/known-photos.ts';

/**
 * Photos of the 24-patch chart, made from its published spectra (mean of 30 charts, BabelColor 2012) under CIE illuminants A, D50, D65, FL2, FL11
 * and LED-B3 (CIE 15) through invented cameras: fixtures/charts. Photos of a real chart by real phones are not at hand; on 18 such, a plain gain
 * from the white patch leaves 6.2 on average, nothing 8.9 (fixtures/reference/tolerances.md).
 */
const asTaken = (lab: Lab65): Lab65 => lab;
const errorsOf = ({ patches }: ChartPhoto, correct: (lab: Lab65) => Lab65): number[] =>
	patches.map(({ seen, truth }) => deltaE2000(correct(seen), truth));

let charts: ChartPhoto[];
let chartsWithoutNeutrals: ChartPhoto[];
beforeAll(async () => {
	charts = await chartPhotos(false);
	chartsWithoutNeutrals = await chartPhotos(true);
});

const pointed = ({ pixels, labels, neutral }: ChartPhoto) =>
	lightOf(pixels, labels, { neutral: { x: neutral.x, y: neutral.y, lightness: neutral.lab[0] } }, null);

describe('the light of chart photos', () => {
	it('is right to 3 CIEDE2000 in the median colour where the user points at the white patch', () => {
		const errors = charts.flatMap((chart) => errorsOf(chart, pointed(chart).correct));
		expect(medianOf(errors)).toBeLessThanOrEqual(3);
		expect(meanOf(errors)).toBeLessThan(4);
	});

	it('never makes a photo worse by more than 1 by taking out the contrast and saturation that phones add, and helps on average', () => {
		const rows = charts.map((chart) => {
			const seen = patchColour(chart.pixels, chart.neutral.x, chart.neutral.y);
			// The white patch reflects a little less than all light.
			const [X, Y, Z] = xyzFromLab(seen);
			const factor = 1 / xyzFromLab([chart.neutral.lab[0], 0, 0])[1];
			const gain = correctionToWhite(labFromXyz([X * factor, Y * factor, Z * factor]));
			return [meanOf(errorsOf(chart, gain)), meanOf(errorsOf(chart, pointed(chart).correct))] as const;
		});
		expect(Math.max(...rows.map(([gain, both]) => both - gain))).toBeLessThan(1);
		expect(meanOf(rows.map(([, both]) => both))).toBeLessThan(meanOf(rows.map(([gain]) => gain)));
	});

	it('without any neutral in the picture is better than nothing by a quarter, and hardly ever worse', () => {
		const rows = chartsWithoutNeutrals.map((chart) => ({
			before: meanOf(errorsOf(chart, asTaken)),
			after: meanOf(errorsOf(chart, lightOf(chart.pixels, chart.labels, {}, null).correct)),
		}));
		expect(medianOf(rows.map(({ after }) => after))).toBeLessThanOrEqual(
			0.75 * medianOf(rows.map(({ before }) => before)),
		);
		const worse = rows.filter(({ before, after }) => after > before + 2);
		expect(worse.length).toBeLessThanOrEqual(0.05 * rows.length);
	});
});
