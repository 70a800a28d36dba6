import { beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { patchColour } from '../../../src/reading/light/eyedropper.ts';
import { foundNeutrals } from '../../../src/reading/light/found-neutrals.ts';
import { lightOf } from '../../../src/reading/light/light.ts';
import { mainColourError } from '../../support/cloth-error.ts';
import { type ClothPhoto, clothPhotos, medianOf } from '../../support/known-photos.ts';

/** Rendered cloth whose true colours are known because we made them: fixtures/renders. */
let photos: readonly ClothPhoto[];
beforeAll(async () => {
	photos = await clothPhotos();
});

/** The invented camera of the renders has no phone's curve, and files so small are read as a camera's. */
const picture = ({ pixels, labels, swatches }: ClothPhoto) => ({
	pixels,
	labels,
	camera: 'camera' as const,
	cloth: swatches,
});
const pointed = (photo: ClothPhoto) => {
	const { x, y, lab } = photo.neutral!;
	return lightOf(picture(photo), { neutrals: [{ x, y, lightness: lab[0] }] }, null);
};

describe('the light of photos of cloth', () => {
	it('gives the main colour within 3 CIEDE2000 in the median where the user points at a sheet or card', () => {
		const errors = photos
			.filter(({ neutral }) => neutral)
			.map((photo) => mainColourError(photo, pointed(photo).correct));
		expect(errors.length).toBeGreaterThan(20);
		expect(medianOf(errors)).toBeLessThanOrEqual(3);
	});

	it('takes every sheet and card that is really one', () => {
		for (const photo of photos.filter(({ neutral }) => neutral)) {
			expect(pointed(photo).light.source, photo.file).toBe('neutral-pointed');
		}
	});

	it('finds many sheets and some cards by itself, and nothing where none lies', () => {
		const found = photos.map((photo) => ({ photo, neutrals: foundNeutrals(photo.pixels, photo.labels) }));
		for (const { photo, neutrals } of found) {
			if (!neutrals) continue;
			expect(photo.neutral, photo.file).not.toBeNull();
			const kind = neutrals.white ? 'white sheet' : 'grey card';
			expect(kind, photo.file).toBe(photo.neutral!.kind);
			const truth = patchColour(photo.pixels, photo.neutral!.x, photo.neutral!.y);
			expect(deltaE2000((neutrals.white ?? neutrals.grey)!.seen, truth), photo.file).toBeLessThan(4);
		}
		const sheets = found.filter(({ photo }) => photo.neutral?.kind === 'white sheet');
		expect(sheets.filter(({ neutrals }) => neutrals).length).toBeGreaterThanOrEqual(0.5 * sheets.length);
	});

	it('says the same of the same photo every time', () => {
		const [one, other] = [lightOf(picture(photos[0]!), {}, null), lightOf(picture(photos[0]!), {}, null)];
		expect(one.light).toEqual(other.light);
		expect(one.correct([50, 10, 10])).toEqual(other.correct([50, 10, 10]));
	});
});
