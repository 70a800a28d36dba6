import type { Image, ImageData } from '@vibrant/image';
import { labFromSrgb8 } from '../colour/lab65.ts';
import type { Pixels } from '../reading/pixels.ts';
import type { RawSwatch } from '../reading/swatches/swatches.ts';

/** Colours of a scene: as many as a photo adds to a palette. */
const SCENE_COLOURS = 8;
const LEAST_SHARE = 0.03;

/** What the library finds; its own declarations lose the type on the way. */
type Quantized = {
	readonly colors: readonly {
		readonly r: number;
		readonly g: number;
		readonly b: number;
		readonly population: number;
	}[];
};

/** Our own decoded pixels in the form the library takes: its own decoder is slow, and knows neither WebP nor colour profiles. */
function imageClassOf(pixels: Pixels): new () => Image {
	const rgba = Buffer.alloc(pixels.widthPx * pixels.heightPx * 4, 255);
	for (let i = 0; i < pixels.widthPx * pixels.heightPx; i++) {
		rgba.set(pixels.rgb.subarray(i * 3, i * 3 + 3), i * 4);
		if (pixels.alpha) rgba[i * 4 + 3] = pixels.alpha[i]!;
	}
	let data: ImageData = { data: rgba, width: pixels.widthPx, height: pixels.heightPx };
	return class implements Image {
		async load(): Promise<Image> {
			return this;
		}
		clear(): void {}
		update(next: ImageData): void {
			data = next;
		}
		getWidth(): number {
			return data.width;
		}
		getHeight(): number {
			return data.height;
		}
		getPixelCount(): number {
			return data.width * data.height;
		}
		getImageData(): ImageData {
			return data;
		}
		// The pixels come at the size they are analysed in: there is nothing to shrink, hold or free.
		resize(): void {}
		scaleDown(): void {}
		remove(): void {}
	};
}

/**
 * The colours of a picture with neither garment nor person: its whole frame, by node-vibrant's quantizer. Heaviest first, shares summing to 1;
 * a picture of one colour gives one swatch.
 */
export async function sceneSwatches(pixels: Pixels): Promise<RawSwatch[]> {
	// Loaded with the first scene: what it brings along is nearly half of all objects of a reading thread, through which its collector must go.
	const { Vibrant } = await import('node-vibrant/node');
	const vibrant = new Vibrant('', { ImageClass: imageClassOf(pixels), colorCount: SCENE_COLOURS, filters: [] });
	await vibrant.getPalette();
	const { colors: colours } = vibrant.result as Quantized;
	const total = colours.reduce((sum, { population }) => sum + population, 0);
	const kept = colours.filter(({ population }) => population / total >= LEAST_SHARE);
	const whole = kept.reduce((sum, { population }) => sum + population, 0);
	return kept
		.map(({ r, g, b, population }) => ({ lab: labFromSrgb8(r, g, b), share: population / whole, slot: null }))
		.sort((a, b) => b.share - a.share || a.lab[0] - b.lab[0]);
}
