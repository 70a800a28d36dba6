import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { type Lab65, labFromSrgb8 } from '../../../src/colour/lab65.ts';
import { lightOf } from '../../../src/reading/light/light.ts';
import type { LabelMap, Pixels } from '../../../src/reading/pixels.ts';
import { deterministicNoise } from '../../support/noise.ts';

/** The lamp's factors on linear sRGB: daylight, and a bulb as phones leave it half balanced (invented). */
const DAYLIGHT = [1, 1, 1] as const;
const WARM = [1.25, 1, 0.6] as const;
type Rgb = readonly [number, number, number];
type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

const [WIDTH, HEIGHT] = [360, 480];
const encoded = (v: number) => 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.min(1, v) ** (1 / 2.4) - 0.055); // IEC 61966-2-1

/** A garment (linear sRGB reflectance) in the middle of a rough floor, with an even thing beside it, under a lamp. */
function scene(floor: Rgb, cloth: Rgb, lamp: Rgb, thing: { readonly box: Box; readonly rgb: Rgb } | null) {
	const noise = deterministicNoise(7);
	const rgb = new Uint8Array(WIDTH * HEIGHT * 3);
	const classes = new Uint8Array(WIDTH * HEIGHT);
	const within = (x: number, y: number, { left, top, width, height }: Box) =>
		x >= left && x < left + width && y >= top && y < top + height;
	const garment = { left: 110, top: 140, width: 150, height: 220 };
	for (let y = 0; y < HEIGHT; y++) {
		for (let x = 0; x < WIDTH; x++) {
			const at = y * WIDTH + x;
			const isThing = thing !== null && within(x, y, thing.box);
			const isCloth = within(x, y, garment);
			const surface = isThing ? thing.rgb : isCloth ? cloth : floor;
			const rough = isThing ? 1 : 1 + 0.25 * noise();
			if (isCloth) classes[at] = 1;
			for (let k = 0; k < 3; k++) rgb[at * 3 + k] = Math.round(encoded(surface[k]! * lamp[k]! * 0.8 * rough));
		}
	}
	const pixels: Pixels = { widthPx: WIDTH, heightPx: HEIGHT, rgb, alpha: null };
	const labels: LabelMap = { widthPx: WIDTH, heightPx: HEIGHT, classes };
	return { pixels, labels };
}

const labOf = (surface: Rgb, lamp: Rgb, exposure: number): Lab65 => {
	const [r, g, b] = surface.map((v, k) => encoded(v * lamp[k]! * exposure)) as [number, number, number];
	return labFromSrgb8(r, g, b);
};

const SHEET = { left: 20, top: 20, width: 70, height: 100 };
const PAPER: Rgb = [0.88, 0.88, 0.88]; // L* 95
const OAK: Rgb = [0.32, 0.2, 0.11];
const MOSS: Rgb = [0.16, 0.2, 0.09];
const truth = labOf(MOSS, DAYLIGHT, 1);
const seenIn = (lamp: Rgb) => labOf(MOSS, lamp, 0.8);
const errorOf = (correct: (lab: Lab65) => Lab65, lamp: Rgb) => deltaE2000(correct(seenIn(lamp)), truth);

describe('the light of a photo', () => {
	it('is told by a white sheet that is found by itself', () => {
		const { pixels, labels } = scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER });
		const { light, correct } = lightOf(pixels, labels, {}, null);
		expect(light.source).toBe('neutral-found');
		expect(light.reason).toContain('white sheet');
		expect(errorOf((lab) => lab, WARM)).toBeGreaterThan(7);
		expect(errorOf(correct, WARM)).toBeLessThan(4.5);
	});

	it('is told by the point the user calls neutral, before anything found', () => {
		const { pixels, labels } = scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER });
		const neutral = { x: 55, y: 70, lightness: 95 };
		const { light, correct } = lightOf(pixels, labels, { neutral }, null);
		expect(light).toMatchObject({ source: 'neutral-pointed', strength: 1 });
		expect(errorOf(correct, WARM)).toBeLessThan(4.5);
	});

	it.each<[string, Rgb]>([
		['pink', [0.85, 0.45, 0.55]],
		['green', [0.4, 0.8, 0.4]],
		['blue', [0.25, 0.5, 0.95]],
	])('is not told by a sheet of %s paper', (_, paper) => {
		const { pixels, labels } = scene(OAK, MOSS, DAYLIGHT, { box: SHEET, rgb: paper });
		const { light, correct } = lightOf(pixels, labels, {}, null);
		expect(light.source).not.toBe('neutral-found');
		expect(errorOf(correct, DAYLIGHT)).toBeLessThan(errorOf((lab) => lab, DAYLIGHT) + 2);
	});

	it('is estimated from the background, in part only, where no neutral is seen', () => {
		const { pixels, labels } = scene([0.5, 0.5, 0.48], MOSS, WARM, null);
		const { light, correct } = lightOf(pixels, labels, {}, null);
		expect(light.source).toBe('estimate');
		expect(light.strength).toBeGreaterThan(0);
		expect(light.strength).toBeLessThan(0.8);
		expect(errorOf(correct, WARM)).toBeLessThan(0.75 * errorOf((lab) => lab, WARM));
	});

	it('does not follow a lawn-green coat on a lawn-green bed: one colour filling the frame gets no worse', () => {
		const lawn: Rgb = [0.12, 0.25, 0.06];
		const { pixels, labels } = scene(lawn, lawn, DAYLIGHT, null);
		const { correct } = lightOf(pixels, labels, {}, null);
		const [seen, real] = [labOf(lawn, DAYLIGHT, 0.8), labOf(lawn, DAYLIGHT, 1)];
		expect(deltaE2000(correct(seen), real)).toBeLessThan(deltaE2000(seen, real) + 2);
	});

	it('never takes the colour of the garment for the lamp', () => {
		const [red, green] = [[0.5, 0.05, 0.05] as const, [0.05, 0.4, 0.05] as const].map((cloth) => {
			const { pixels, labels } = scene([0.4, 0.4, 0.4], cloth, DAYLIGHT, null);
			return lightOf(pixels, labels, {}, null).correct([50, 10, 10]);
		}) as [Lab65, Lab65];
		expect(deltaE2000(red, green)).toBeLessThan(1);
	});

	it('comes from its same-light group where the picture itself has no white sheet', () => {
		const { pixels, labels } = scene(OAK, MOSS, WARM, null);
		const white = labOf([1, 1, 1], WARM, 0.8);
		const { light, correct } = lightOf(pixels, labels, {}, white);
		expect(light.source).toBe('group');
		expect(errorOf(correct, WARM)).toBeLessThan(4.5);
	});

	it('is left alone in a scene: a sunset is meant to be red', () => {
		const { pixels } = scene([0.6, 0.25, 0.1], MOSS, WARM, null);
		const { light, correct } = lightOf(pixels, null, {}, null);
		expect(light.source).toBe('none');
		expect(correct([60, 30, 40])).toEqual([60, 30, 40]);
	});

	it('ignores a pointed neutral that is too dark to tell anything', () => {
		const { pixels, labels } = scene(OAK, MOSS, WARM, { box: SHEET, rgb: [0.004, 0.004, 0.004] });
		const { light } = lightOf(pixels, labels, { neutral: { x: 55, y: 70, lightness: 95 } }, null);
		expect(light.source).not.toBe('neutral-pointed');
	});

	it('moves step by step by hand, and back to the start when the steps are taken away', () => {
		const { pixels, labels } = scene(OAK, MOSS, DAYLIGHT, null);
		const at = (warmer: number, lighter: number) => {
			const { light, correct } = lightOf(pixels, labels, { byHand: { warmer, lighter } }, null);
			expect(light.source).toBe('by-hand');
			return correct([50, 0, 0]);
		};
		const start = lightOf(pixels, labels, {}, null).correct([50, 0, 0]);
		expect(at(0, 0)).toEqual(start);
		expect(at(3, 0)[2]).toBeGreaterThan(at(1, 0)[2]);
		expect(at(-3, 0)[2]).toBeLessThan(start[2]);
		expect(at(0, 2)[0]).toBeGreaterThan(start[0]);
		expect(at(0, -10)[0]).toBeGreaterThanOrEqual(0);
	});
});
