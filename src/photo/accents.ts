import type { Image, ImageData } from '@vibrant/image';
import { distanceBetween } from '../colour/delta-e-many.ts';
import { chroma, type Lab65, labFromSrgb8 } from '../colour/lab65.ts';
import type { Pixels } from '../reading/pixels.ts';

/** CIELAB chroma and share of the frame from which a colour is an accent, how far accents lie apart (CIEDE2000), and how many are told at most. */
const VIVID_FROM = 25;
const LEAST_SHARE = 0.01;
const APART = 10;
const MOST = 3;

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
 * Vivid colours of the frame as node-vibrant picks them, most vivid first; none where nothing is vivid. It looks for colours that stand out,
 * however small, so it says when clustering has lost one (figures: bench/NOTES.md).
 */
export async function accentsOf(pixels: Pixels): Promise<Lab65[]> {
	// Loaded with the first scene: what it brings along is nearly half of all objects of a reading thread, through which its collector must go.
	const { Vibrant } = await import('node-vibrant/node');
	const palette = await new Vibrant('', { ImageClass: imageClassOf(pixels) }).getPalette();
	const least = LEAST_SHARE * pixels.widthPx * pixels.heightPx;
	// A swatch that no pixel stands behind is the library's own invention.
	const found = Object.values(palette).flatMap((swatch): Lab65[] =>
		swatch && swatch.population >= least ? [labFromSrgb8(...swatch.rgb)] : [],
	);
	const accents: Lab65[] = [];
	for (const lab of found.filter((one) => chroma(one) >= VIVID_FROM).sort((a, b) => chroma(b) - chroma(a)))
		if (accents.length < MOST && accents.every((one) => distanceBetween(one, lab) > APART)) accents.push(lab);
	return accents;
}
