import { beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { labFromSrgb8 } from '../../../src/colour/lab65.ts';
import { lightOf } from '../../../src/reading/light/light.ts';
import { foundNeutral } from '../../../src/reading/light/neutral.ts';
import type { LabelMap, Pixels } from '../../../src/reading/pixels.ts';
import { mainColourError } from '../../support/cloth-error.ts';
import { type ClothPhoto, clothPhotos, medianOf } from '../../support/known-photos.ts';

/** Rendered cloth whose true colours are known because we made them: fixtures/renders. */
let photos: ClothPhoto[];
beforeAll(async () => {
	photos = await clothPhotos();
}, 120_000);

const before = (photo: ClothPhoto) => mainColourError(photo, (lab) => lab);
const byItself = ({ pixels, labels }: ClothPhoto) => lightOf(pixels, labels, {}, null);
const pointed = ({ pixels, labels, neutral }: ClothPhoto) =>
	lightOf(pixels, labels, { neutral: { x: neutral!.x, y: neutral!.y, lightness: neutral!.lab[0] } }, null);

describe('the light of photos of cloth', () => {
	it('gives the main colour within 3 CIEDE2000 in the median where the user points at a sheet or card', () => {
		const errors = photos
			.filter(({ neutral }) => neutral)
			.map((photo) => mainColourError(photo, pointed(photo).correct));
		expect(errors.length).toBeGreaterThan(20);
		expect(medianOf(errors)).toBeLessThanOrEqual(3);
	});

	it('finds many sheets and cards by itself, and nothing where none lies', () => {
		const found = photos.map((photo) => ({ photo, neutral: foundNeutral(photo.pixels, photo.labels, null) }));
		for (const { photo, neutral } of found) {
			if (!neutral) continue;
			expect(photo.neutral, photo.file).not.toBeNull();
			expect(Math.hypot(neutral.x - photo.neutral!.x, neutral.y - photo.neutral!.y), photo.file).toBeLessThan(15);
			expect(neutral.kind, photo.file).toBe('white-sheet');
		}
		const sheets = found.filter(({ photo }) => photo.neutral?.kind === 'white sheet');
		expect(sheets.filter(({ neutral }) => neutral).length).toBeGreaterThanOrEqual(0.5 * sheets.length);
	});

	it('without a neutral is better than no correction by a quarter in the median, and worse by more than 2 in at most 5 %', () => {
		const rows = photos
			.filter(({ neutral }) => !neutral)
			.map((photo) => ({
				file: photo.file,
				before: before(photo),
				after: mainColourError(photo, byItself(photo).correct),
			}));
		expect(medianOf(rows.map(({ after }) => after))).toBeLessThanOrEqual(
			0.75 * medianOf(rows.map(({ before }) => before)),
		);
		expect(rows.filter(({ before, after }) => after > before + 2).length).toBeLessThanOrEqual(0.05 * rows.length);
	});

	it('says the same of the same photo every time', () => {
		const [photo] = photos;
		const [one, other] = [byItself(photo!), byItself(photo!)];
		expect(one.light).toEqual(other.light);
		expect(one.correct([50, 10, 10])).toEqual(other.correct([50, 10, 10]));
	});
});

/** A picture whose pixels a function of column and row gives, and whose clothes are a box in the middle. */
function picture(colour: (x: number, y: number) => readonly [number, number, number]): {
	pixels: Pixels;
	labels: LabelMap;
} {
	const [widthPx, heightPx] = [200, 300];
	const rgb = new Uint8Array(widthPx * heightPx * 3);
	const classes = new Uint8Array(widthPx * heightPx);
	for (let y = 0; y < heightPx; y++) {
		for (let x = 0; x < widthPx; x++) {
			const at = y * widthPx + x;
			// A grain, as every camera gives: a ground without any is taken for a computer's.
			const grain = ((x * 7 + y * 13) % 5) - 2;
			rgb.set(
				colour(x, y).map((value) => Math.min(255, Math.max(0, value + grain))),
				at * 3,
			);
			classes[at] = x >= 60 && x < 140 && y >= 60 && y < 200 ? 1 : 0;
		}
	}
	return { pixels: { widthPx, heightPx, rgb, alpha: null }, labels: { widthPx, heightPx, classes } };
}

describe('a light that is told with caution', () => {
	it('believes little of a lawn around the clothes', () => {
		const { pixels, labels } = picture((x, y) => [60, 110 + ((x * 3 + y) % 20), 40]);
		const { light, correct } = lightOf(pixels, labels, {}, null);
		expect(light.source).toBe('estimate');
		expect(light.strength).toBeLessThan(0.2);
		const red = labFromSrgb8(160, 40, 40);
		const [, a, b] = correct(red);
		expect(Math.hypot(a - red[1], b - red[2])).toBeLessThan(12);
	});

	it('takes a warm lamp out of a grey wall mostly, and leaves a cut-out on a flat ground alone', () => {
		const warm = picture((x, y) => (x >= 60 && x < 140 && y >= 60 && y < 200 ? [120, 60, 60] : [205, 175, 130]));
		const { light, correct } = lightOf(warm.pixels, warm.labels, {}, null);
		expect(light.source).toBe('estimate');
		const wall = labFromSrgb8(205, 175, 130);
		expect(Math.hypot(...correct(wall).slice(1))).toBeLessThan(0.6 * Math.hypot(wall[1], wall[2]));
		const flat = picture(() => [205, 175, 130]);
		flat.pixels.rgb.fill(0xd0);
		expect(lightOf(flat.pixels, flat.labels, {}, null).light.source).toBe('none');
	});

	it('hears the hand last, the pointed neutral before the group, and leaves a scene alone', () => {
		const { pixels, labels } = picture(() => [205, 175, 130]);
		const cast = labFromSrgb8(250, 220, 180);
		const neutral = { x: 20, y: 20, lightness: 80 };
		expect(lightOf(pixels, labels, { neutral }, cast).light.source).toBe('neutral-pointed');
		expect(lightOf(pixels, labels, {}, cast).light.source).toBe('group');
		expect(lightOf(pixels, null, {}, null).light.source).toBe('none');
		const plain = lightOf(pixels, labels, { neutral }, null);
		const byHand = lightOf(pixels, labels, { neutral, byHand: { warmer: 3, lighter: -2 } }, null);
		expect(byHand.light.source).toBe('by-hand');
		const [one, other] = [plain.correct([50, 0, 0]), byHand.correct([50, 0, 0])];
		expect(other[0]).toBeLessThan(one[0]);
		expect(other[2]).toBeGreaterThan(one[2]);
		const none = lightOf(pixels, labels, { neutral, byHand: { warmer: 0, lighter: 0 } }, null);
		expect(deltaE2000(none.correct([50, 10, 0]), plain.correct([50, 10, 0]))).toBeLessThan(1e-9);
	});
});
