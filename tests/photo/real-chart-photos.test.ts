import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { srgbFromLab } from '../../src/colour/lab65.ts';
import { readPhoto } from '../../src/photo/read-photo.ts';
import { meanOf } from '../support/known-photos.ts';
import { deterministicNoise } from '../support/noise.ts';
import { MIDDLE_GREY_PATCH, type RealChart, realCharts, WHITE_PATCH } from '../support/real-charts.ts';

/**
 * Photos of a chart painted anew from what was measured in real phone photos (fixtures/reference/real-charts.csv): the patches, and what lies around
 * as bright as it was. Read from the file's bytes as any photo is, so that all between file and figure is tried.
 */
const [WIDTH, HEIGHT] = [900, 680];
const PATCH = 90;
const [LEFT, TOP] = [180, 160];
const BLOCK = 10;
const middle = (patch: number) => ({
	x: LEFT + (patch % 6) * PATCH + PATCH / 2,
	y: TOP + Math.floor(patch / 6) * PATCH + PATCH / 2,
});

async function painted({ seen, surround }: RealChart): Promise<Buffer> {
	const noise = deterministicNoise(5);
	const rgb = Buffer.alloc(WIDTH * HEIGHT * 3);
	const fill = (left: number, top: number, width: number, height: number, colour: readonly number[]) => {
		for (let y = top; y < Math.min(HEIGHT, top + height); y++) {
			for (let x = left; x < Math.min(WIDTH, left + width); x++) {
				for (let k = 0; k < 3; k++) {
					const value = colour[k]! + 2 * noise();
					rgb[(y * WIDTH + x) * 3 + k] = Math.max(0, Math.min(255, Math.round(value)));
				}
			}
		}
	};
	for (let y = 0; y < HEIGHT; y += BLOCK) {
		for (let x = 0; x < WIDTH; x += BLOCK) {
			// A quarter of the blocks lie below the measured luminance, as a quarter of the surround did.
			const luminance = surround * 4 ** ((noise() + 0.5) * 0.8);
			fill(x, y, BLOCK, BLOCK, Array<number>(3).fill(255 * Math.min(1, luminance) ** (1 / 2.2)));
		}
	}
	fill(LEFT - 8, TOP - 8, 6 * PATCH + 16, 4 * PATCH + 16, [30, 30, 30]);
	for (const [patch, lab] of seen.entries()) {
		const { x, y } = middle(patch);
		fill(
			x - 38,
			y - 38,
			76,
			76,
			srgbFromLab(lab).map((value) => value * 255),
		);
	}
	return sharp(rgb, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } })
		.jpeg({ quality: 95 })
		.toBuffer();
}

/** Each chart painted once, whatever is pointed at. */
const paintedCharts = new Map<RealChart, Promise<Buffer>>();
function photoOf(chart: RealChart): Promise<Buffer> {
	const photo = paintedCharts.get(chart) ?? painted(chart);
	paintedCharts.set(chart, photo);
	return photo;
}

const phones = realCharts().filter(({ camera }) => camera === 'phone');
const at = Array.from({ length: 24 }, (_, patch) => middle(patch));

/** True mean error and stated error of each phone photo, read with these patches pointed at. */
async function errorsWith(patches: readonly number[]): Promise<{ readonly error: number; readonly stated: number }[]> {
	const read = [];
	for (const chart of phones) {
		const neutrals = patches.map((patch) => ({ ...middle(patch), lightness: chart.truth[patch]![0] }));
		const result = await readPhoto(await photoOf(chart), { at, correction: { neutrals } });
		if (!result.ok) throw new Error(result.message);
		const error = meanOf(result.at!.map(({ lab }, patch) => deltaE2000(lab, chart.truth[patch]!)));
		read.push({ error, stated: result.reading.trust.error });
	}
	return read;
}

describe('a phone photo of a chart, read from its file', () => {
	// [pointed at, patches, mean error wanted]
	it.each<[string, number[], number]>([
		['nothing', [], 8.7],
		['the white', [WHITE_PATCH], 6.5],
		['the white and the grey', [WHITE_PATCH, MIDDLE_GREY_PATCH], 4.9],
	])(
		'with %s pointed at errs as little as the formulas promise, and states an error that covers three in four',
		async (_, patches, wanted) => {
			const read = await errorsWith(patches);
			expect(meanOf(read.map(({ error }) => error))).toBeLessThanOrEqual(wanted);
			expect(meanOf(read.map(({ error, stated }) => (error <= stated ? 1 : 0)))).toBeGreaterThanOrEqual(0.75);
		},
	);
});
