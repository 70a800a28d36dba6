import type { Lab65 } from '../colour/lab65.ts';
import { colourName } from '../colour/name.ts';
import type { CameraKind, Light } from '../wardrobe/words/light.ts';
import type { Correction, PhotoQuality, Reading } from '../wardrobe/words/reading.ts';
import { backgroundColour } from './light/background.ts';
import { lightOf } from './light/light.ts';
import { trustOf } from './light/trust.ts';
import { photoQuality } from './photo-quality.ts';
import { type LabelMap, type Pixels, visiblePixels } from './pixels.ts';
import { type ClothPixels, clothPixels, framePixels, insideClothes } from './swatches/cloth-pixels.ts';
import { sceneSwatches } from './swatches/scene-swatches.ts';
import { swatchesOf } from './swatches/swatches.ts';

export type PixelReadingOptions = {
	/** What the user told about the photo; points in pixels of the picture given. */
	readonly correction?: Correction;
	/** What took the picture; a phone where nothing tells. */
	readonly camera?: CameraKind;
	/** The light that the photo shares with others. */
	readonly sharedLight?: Light | null;
	/** Colours of a scene that stand out, however small: its swatches start from them too. */
	readonly accents?: readonly Lab65[];
};

/** What pixels tell of their colours, and what it was read from. */
export type PixelReading = Pick<Reading, 'swatches' | 'uncorrected' | 'light' | 'trust' | 'background' | 'neutrals'> & {
	/** What the photo by itself says of its light. */
	readonly ownLight: Light;
	readonly quality: PhotoQuality;
	/** The sampled pixels, slot by slot. */
	readonly cloths: readonly ClothPixels[];
	/** One byte a pixel: the label of the clothes a little inside their edge, 0 elsewhere; for a scene 1 wherever something is seen. */
	readonly marks: Uint8Array;
	/** Takes the photo's light out of a colour. */
	readonly correct: (lab: Lab65) => Lab65;
};

/**
 * Swatches, light and trust of a picture: the one way from pixels to colours, in the reading process and on the pocket page. `labels` say what
 * each pixel shows; null for a scene, whose whole frame counts. Same input, same numbers. Null where nothing is seen: no pixel of clothes, or
 * all of it transparent.
 */
export function readingOfPixels(
	pixels: Pixels,
	labels: LabelMap | null,
	{ correction = {}, camera = 'phone', sharedLight = null, accents = [] }: PixelReadingOptions = {},
): PixelReading | null {
	const inside = labels ? insideClothes(labels) : null;
	const cloths = inside ? clothPixels(pixels, inside) : [framePixels(pixels)];
	const raw = inside ? swatchesOf(cloths) : sceneSwatches(cloths[0]!, accents);
	if (raw.length === 0) return null;
	const cloth = labels ? raw : [];
	const picture = { pixels, labels, camera: correction.camera ?? camera, cloth };
	const { light, ownLight, correct, neutrals } = lightOf(picture, correction, sharedLight);
	const quality = photoQuality(pixels, labels);
	return {
		swatches: raw.map(({ lab: seen, share, slot }) => {
			const lab = correct(seen);
			return { lab, share, slot, name: colourName(lab) };
		}),
		uncorrected: raw.map(({ lab }) => lab),
		light,
		ownLight,
		trust: trustOf(light, quality),
		quality,
		...(neutrals ? { neutrals } : {}),
		background: labels && backgroundColour(pixels, labels),
		cloths,
		marks: inside ? inside.marks : visiblePixels(pixels),
		correct,
	};
}
