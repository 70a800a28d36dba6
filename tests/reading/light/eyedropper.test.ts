import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { type Lab65, labFromSrgb8 } from '../../../src/colour/lab65.ts';
import { readPhoto } from '../../../src/photo/read-photo.ts';
import { patchColour } from '../../../src/reading/light/eyedropper.ts';
import type { Pixels } from '../../../src/reading/pixels.ts';
import { chartPhotos } from '../../support/chart-photos.ts';
import { deterministicNoise } from '../../support/noise.ts';

const [WIDTH, HEIGHT] = [300, 200];
const TEAL = [30, 120, 125] as const;

/** A teal cloth, noisy by `noise` byte steps, with whatever `paint` puts on it. */
function cloth(noise: number, paint?: (x: number, y: number) => readonly [number, number, number] | null): Pixels {
	const random = deterministicNoise(3);
	const rgb = new Uint8Array(WIDTH * HEIGHT * 3);
	for (let at = 0; at < WIDTH * HEIGHT; at++) {
		const own = paint?.(at % WIDTH, Math.floor(at / WIDTH)) ?? TEAL;
		for (let k = 0; k < 3; k++) rgb[at * 3 + k] = Math.min(255, Math.max(0, Math.round(own[k]! + noise * random())));
	}
	return { widthPx: WIDTH, heightPx: HEIGHT, rgb, alpha: null };
}

const teal: Lab65 = labFromSrgb8(...TEAL);

describe('the colour at a point', () => {
	it('is the colour that is there', () => {
		expect(deltaE2000(patchColour(cloth(0), 150, 100), teal)).toBeLessThan(0.01);
	});

	it('is the mean of a small patch, so that noise hardly moves it', () => {
		expect(deltaE2000(patchColour(cloth(12), 150, 100), teal)).toBeLessThan(1.5);
	});

	it('is not moved by a button or a bright speck inside the patch', () => {
		const specked = cloth(2, (x, y) => (Math.abs(x - 151) <= 1 && Math.abs(y - 101) <= 1 ? [255, 255, 255] : null));
		expect(deltaE2000(patchColour(specked, 150, 100), teal)).toBeLessThan(1.5);
	});

	it('stays on its side of an edge a few pixels away', () => {
		const halves = cloth(0, (x) => (x >= 160 ? [200, 40, 40] : null));
		expect(deltaE2000(patchColour(halves, 155, 100), teal)).toBeLessThan(0.5);
		expect(deltaE2000(patchColour(halves, 165, 100), labFromSrgb8(200, 40, 40))).toBeLessThan(0.5);
	});

	it.each([
		[-50, -50],
		[9999, 9999],
		[0.4, 199.9],
	])('is that of the nearest edge for a point outside, %s, %s', (x, y) => {
		expect(deltaE2000(patchColour(cloth(0), x, y), teal)).toBeLessThan(0.01);
	});

	it('comes corrected and uncorrected for points of the upright photo, in the order asked', async () => {
		const chart = chartPhotos().find(({ file }) => file === 'a-daylight-setting.jpg')!;
		const { x, y } = chart.neutral;
		const at = [{ x, y }, ...chart.boxes.slice(0, 2).map((box) => ({ x: box.x + 10, y: box.y + 10 }))];
		const result = await readPhoto(chart.bytes, { at, correction: { neutral: { x, y, lightness: 95 } } });
		if (!result.ok) throw new Error(result.message);
		expect(result.at!.map((point) => [point.x, point.y])).toEqual(at.map((point) => [point.x, point.y]));
		const [white] = result.at!;
		// The lamp is CIE A and the camera was left on daylight: the paper looks orange until it is called white.
		expect(white!.uncorrected[2]).toBeGreaterThan(20);
		expect(deltaE2000(white!.lab, [95, 0, 0])).toBeLessThan(1.5);
	});
});
