import { beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { readPhoto } from '../../src/photo/read-photo.ts';
import { CHART_PATCHES, type ChartPhoto, chartPhotos, patchMiddles } from '../support/chart-photos.ts';
import { mean, median } from '../support/statistics.ts';

/**
 * Photos synthesised from published spectra: reflectances of the 24 patches (BabelColor, mean of 30 charts) under the CIE's tabulated
 * illuminants A, D50, D65, FL2, FL11 and LED-B3 (CIE 15:2018 data files), seen by an invented camera; see fixtures/charts/README.md and
 * fixtures/reference/README.md. True colours: the same reflectances under CIE D65, 2 degree observer.
 */
type Measured = {
	readonly chart: ChartPhoto;
	readonly pointed: number[];
	readonly alone: number[];
	readonly untouched: number[];
};

async function errorsOf(chart: ChartPhoto, isPointed: boolean) {
	const { x, y, lab } = chart.neutral;
	const correction = isPointed ? { neutral: { x, y, lightness: lab[0] } } : {};
	const result = await readPhoto(chart.bytes, { correction, at: patchMiddles(chart) });
	if (!result.ok) throw new Error(result.message);
	return {
		corrected: result.at!.map((point, i) => deltaE2000(point.lab, CHART_PATCHES[i]!)),
		untouched: result.at!.map((point, i) => deltaE2000(point.uncorrected, CHART_PATCHES[i]!)),
	};
}

describe('photos of the 24-patch chart under the CIE illuminants', () => {
	const measured: Measured[] = [];

	beforeAll(async () => {
		for (const chart of chartPhotos()) {
			const [pointed, alone] = [await errorsOf(chart, true), await errorsOf(chart, false)];
			measured.push({ chart, pointed: pointed.corrected, alone: alone.corrected, untouched: pointed.untouched });
		}
	});

	it('come within about 3 CIEDE2000 in the median of all patches once the white patch is pointed at', () => {
		expect(median(measured.flatMap(({ untouched }) => untouched))).toBeGreaterThan(9);
		expect(median(measured.flatMap(({ pointed }) => pointed))).toBeLessThan(3.2);
	});

	it('err by 6 or less on average of the patches, as grey-patch corrected phone photos do (our 32 real ones: 5.5)', () => {
		const phones = measured.filter(({ chart }) => chart.camera.contrast > 0);
		expect(phones.length).toBeGreaterThan(10);
		expect(mean(phones.map(({ pointed }) => mean(pointed)))).toBeLessThan(5);
		for (const { chart, pointed } of phones) expect(mean(pointed), chart.file).toBeLessThan(6.5);
	});

	it('gain a quarter in the median where nothing is pointed at, and none loses 2', () => {
		const before = measured.map(({ untouched }) => mean(untouched));
		const after = measured.map(({ alone }) => mean(alone));
		expect(median(after)).toBeLessThan(0.75 * median(before));
		for (const [i, { chart }] of measured.entries()) expect(after[i]! - before[i]!, chart.file).toBeLessThan(2);
	});

	it('lose less than 1.5 by the white patch where the picture was right from the start', () => {
		const right = measured.filter(({ chart }) => chart.file === 'd65-exact.png');
		expect(right).toHaveLength(1);
		expect(mean(right[0]!.pointed) - mean(right[0]!.untouched)).toBeLessThan(1.5);
	});
});
