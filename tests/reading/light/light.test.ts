import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { type Lab65, labFromSrgb8 } from '../../../src/colour/lab65.ts';
import { type LightCorrection, lightOf } from '../../../src/reading/light/light.ts';
import { correctedBy, UNTOLD_PHONE } from '../../../src/reading/light/light-model.ts';
import { trustOf } from '../../../src/reading/light/trust.ts';
import type { LabelMap, Pixels } from '../../../src/reading/pixels.ts';
import type { CameraKind, Light } from '../../../src/wardrobe/words/light.ts';
import type { Correction } from '../../../src/wardrobe/words/reading.ts';
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

type Scene = ReturnType<typeof scene>;

/** The light of a scene whose garment is moss green; the invented camera adds no curve of its own, so it is read as a camera's unless told. */
function lightIn(
	{ pixels, labels }: Scene,
	correction: Correction = {},
	shared: Light | null = null,
	{ camera = 'camera' as CameraKind, cloth = labOf(MOSS, DAYLIGHT, 0.8) } = {},
): LightCorrection {
	return lightOf({ pixels, labels, camera, cloth: [{ lab: cloth, share: 1 }] }, correction, shared);
}

const SHEET = { left: 20, top: 20, width: 70, height: 100 };
const PAPER: Rgb = [0.88, 0.88, 0.88]; // L* 95
const OAK: Rgb = [0.32, 0.2, 0.11];
const MOSS: Rgb = [0.16, 0.2, 0.09];
const truth = labOf(MOSS, DAYLIGHT, 1);
const seenIn = (lamp: Rgb) => labOf(MOSS, lamp, 0.8);
const errorOf = (correct: (lab: Lab65) => Lab65, lamp: Rgb) => deltaE2000(correct(seenIn(lamp)), truth);

const POINT = { x: 55, y: 70 };

describe('the light of a photo', () => {
	it('is told by a white sheet that is found by itself', () => {
		const { light, correct } = lightIn(scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER }));
		expect(light.source).toBe('neutral-found');
		expect(light.reason).toContain('white sheet');
		expect(errorOf((lab) => lab, WARM)).toBeGreaterThan(7);
		expect(errorOf(correct, WARM)).toBeLessThan(4.5);
	});

	it('is told by the point the user calls neutral, before anything found', () => {
		const photo = scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER });
		const { light, correct, neutrals } = lightIn(photo, { neutrals: [{ ...POINT, lightness: 95 }] });
		expect(light).toMatchObject({ source: 'neutral-pointed', strength: 1 });
		expect(neutrals).toMatchObject([{ answer: 'taken', kind: 'white' }]);
		expect(errorOf(correct, WARM)).toBeLessThan(4.5);
	});

	it('takes the brighter of two points for the paper and the other for the card, where that is not told', () => {
		const photo = scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER });
		for (let y = 300; y < 400; y++) {
			for (let x = 20; x < 90; x++) photo.pixels.rgb.set([150, 140, 115], (y * WIDTH + x) * 3);
		}
		const { neutrals, light } = lightIn(photo, { neutrals: [{ x: 55, y: 350 }, POINT] });
		expect(neutrals!.map(({ kind }) => kind)).toEqual(['grey', 'white']);
		expect(light.reason).toContain('the white and the grey');
	});

	// Cream or paper under a very warm lamp: the user is asked, and says yes.
	it('is no surer where what tells it is in doubt, also where the user insists: as sure as with nothing told, or less', () => {
		const photo = scene(OAK, MOSS, [1.3, 1, 0.5], { box: SHEET, rgb: PAPER });
		const untold = lightIn({ ...photo, labels: { ...photo.labels, classes: photo.labels.classes.map(() => 1) } });
		const quality = { clothesShare: 0.4, clippedShare: 0, brightest: 0.5, sharpness: 0.2 };
		expect(untold.light.source).toBe('none');
		for (const sure of [false, true]) {
			const { light, neutrals } = lightIn(photo, { neutrals: [{ ...POINT, lightness: 95, sure }] });
			expect(neutrals).toMatchObject([{ answer: sure ? 'taken' : 'asked' }]);
			expect(light).toMatchObject({ source: 'neutral-pointed', strength: 0 });
			expect(trustOf(light, quality).error).toBeGreaterThanOrEqual(trustOf(untold.light, quality).error);
			expect(trustOf(light, quality)).toMatchObject({
				untold: true,
				reasons: [expect.stringContaining('may be no white'), expect.anything(), expect.anything()],
			});
		}
	});

	it('is told by the certain one of two points alone, and the other is left out with its reason', () => {
		const photo = scene(OAK, MOSS, DAYLIGHT, { box: SHEET, rgb: PAPER });
		for (let at = 300 * WIDTH; at < 340 * WIDTH; at++) photo.pixels.rgb.set([200, 140, 90], at * 3);
		const alone = lightIn(photo, { neutrals: [{ ...POINT, lightness: 95 }] });
		const { light, neutrals } = lightIn(photo, {
			neutrals: [
				{ ...POINT, lightness: 95 },
				{ x: 40, y: 320, lightness: 50 },
			],
		});
		expect(neutrals).toMatchObject([
			{ answer: 'taken' },
			{ answer: 'refused', sentence: expect.stringContaining('orange') },
		]);
		expect(light).toMatchObject({ strength: 1, model: alone.light.model!, error: alone.light.error! });
	});

	it('is told by neither of a white and a grey that no camera shows so in one light', () => {
		const photo = scene(OAK, MOSS, DAYLIGHT, { box: SHEET, rgb: PAPER });
		for (let y = 20; y < 70; y++)
			for (let x = 20; x < 90; x++) photo.pixels.rgb.set([205, 205, 205], (y * WIDTH + x) * 3);
		const { light, neutrals } = lightIn(photo, {
			neutrals: [
				{ x: 55, y: 100, lightness: 95 },
				{ x: 55, y: 45, lightness: 50 },
			],
		});
		expect(neutrals).toMatchObject([{ answer: 'refused' }, { answer: 'refused' }]);
		expect(light.source).toBe('none');
		expect(light.reason).toContain('never look like these two');
	});

	it('is told alike by a correction of the older form, with one neutral', () => {
		const photo = scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER });
		const neutral = { ...POINT, lightness: 95 };
		expect(lightIn(photo, { neutral }).light).toEqual(lightIn(photo, { neutrals: [neutral] }).light);
	});

	it.each<[string, Rgb]>([
		['pink', [0.85, 0.45, 0.55]],
		['green', [0.4, 0.8, 0.4]],
		['blue', [0.25, 0.5, 0.95]],
	])('is not told by a sheet of %s paper, found or pointed at', (_, paper) => {
		const photo = scene(OAK, MOSS, DAYLIGHT, { box: SHEET, rgb: paper });
		const [found, pointed] = [lightIn(photo), lightIn(photo, { neutrals: [{ ...POINT, lightness: 95 }] })];
		expect(found.light.source).toBe('none');
		expect(pointed.light.source).toBe('none');
		expect(pointed.light.reason).toContain('not used');
		expect(pointed.light.error).toBe(found.light.error);
		expect(errorOf(pointed.correct, DAYLIGHT)).toBe(errorOf((lab) => lab, DAYLIGHT));
	});

	it('is never guessed from what lies around: on real phones guesses made hue and chroma worse', () => {
		const around: Rgb[] = [OAK, [0.5, 0.5, 0.48], [0.12, 0.25, 0.06]];
		const corrected = around.map((floor) => lightIn(scene(floor, MOSS, WARM, null)).correct([50, 10, 10]));
		for (const lab of corrected) expect(lab).toEqual([50, 10, 10]);
	});

	it('of a phone without any neutral loses only what phones do to most photos', () => {
		const photo = scene(OAK, MOSS, DAYLIGHT, null);
		const [L, a, b] = lightIn(photo, {}, null, { camera: 'phone' }).correct([50, 10, -20]);
		expect([L, a, b]).toEqual(correctedBy(UNTOLD_PHONE)([50, 10, -20]));
		expect(Math.hypot(a, b)).toBeLessThan(0.9 * Math.hypot(10, -20));
	});

	it('of a shop picture on a computer-made ground is left as the shop made it', () => {
		const { pixels, labels } = scene(OAK, MOSS, DAYLIGHT, null);
		const rgb = Uint8Array.from(pixels.rgb);
		for (let at = 0; at < labels.classes.length; at++) if (labels.classes[at] === 0) rgb.fill(240, at * 3, at * 3 + 3);
		const { correct } = lightIn({ pixels: { ...pixels, rgb }, labels }, {}, null, { camera: 'phone' });
		expect(correct([50, 10, -20])).toEqual([50, 10, -20]);
	});

	it('comes from its same-light group where the picture itself has no neutral', () => {
		const other = lightIn(scene(OAK, MOSS, WARM, { box: SHEET, rgb: PAPER })).ownLight;
		const { light, correct } = lightIn(scene(OAK, MOSS, WARM, null), {}, { ...other, source: 'group' });
		expect(light.source).toBe('group');
		expect(errorOf(correct, WARM)).toBeLessThan(4.5);
	});

	it('is left alone in a scene: a sunset is meant to be red', () => {
		const { pixels } = scene([0.6, 0.25, 0.1], MOSS, WARM, null);
		const { light, correct } = lightOf({ pixels, labels: null, camera: 'camera', cloth: [] }, {}, null);
		expect(light.source).toBe('none');
		expect(correct([60, 30, 40])).toEqual([60, 30, 40]);
	});

	it('moves step by step by hand, and back to the start when the steps are taken away', () => {
		const photo = scene(OAK, MOSS, DAYLIGHT, null);
		const at = (warmer: number, lighter: number) => {
			const { light, correct } = lightIn(photo, { byHand: { warmer, lighter } });
			expect(light.source).toBe('by-hand');
			return correct([50, 0, 0]);
		};
		const start = lightIn(photo).correct([50, 0, 0]);
		expect(at(0, 0)).toEqual(start);
		expect(at(3, 0)[2]).toBeGreaterThan(at(1, 0)[2]);
		expect(at(-3, 0)[2]).toBeLessThan(start[2]);
		expect(at(0, 2)[0]).toBeGreaterThan(start[0]);
		expect(at(0, -10)[0]).toBeGreaterThanOrEqual(0);
	});
});
