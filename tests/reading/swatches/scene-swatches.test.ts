import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { accentsOf } from '../../../src/photo/accents.ts';
import { decodePhoto } from '../../../src/photo/file/decode.ts';
import type { Pixels } from '../../../src/reading/pixels.ts';
import { framePixels } from '../../../src/reading/swatches/cloth-pixels.ts';
import { sceneSwatches } from '../../../src/reading/swatches/scene-swatches.ts';
import { shadesOf } from '../../../src/reading/swatches/shades.ts';
import { earthMoversDistance } from '../../support/earth-movers-distance.ts';

type Colour = { readonly lab: Lab65; readonly share: number };
const shares = (colours: readonly Colour[]) => colours.map(({ share }) => share);

/** Earth mover's distance (Rubner, Tomasi and Guibas 2000) of two sets of colours with CIEDE2000 as the cost. */
const apart = (some: readonly Colour[], others: readonly Colour[]): number =>
	earthMoversDistance(
		shares(some),
		shares(others),
		some.map((one) => Float64Array.from(others, (other) => deltaE2000(one.lab, other.lab))),
	);

async function decoded(name: string): Promise<Pixels> {
	const photo = await decodePhoto(
		readFileSync(fileURLToPath(new URL(`../../../demo-images/${name}`, import.meta.url))),
	);
	if (!photo.ok) throw new Error(photo.message);
	return photo.analysis;
}

const swatchesIn = async (pixels: Pixels) => sceneSwatches(framePixels(pixels), await accentsOf(pixels));

/** A quarter of the demo's pictures: whatever it shows, read as a scene. */
function quarterOf({ widthPx, heightPx, rgb }: Pixels, right: boolean, lower: boolean): Pixels {
	const [width, height] = [widthPx >> 1, heightPx >> 1];
	const part = new Uint8Array(width * height * 3);
	for (let row = 0; row < height; row++) {
		const from = ((row + (lower ? height : 0)) * widthPx + (right ? width : 0)) * 3;
		part.set(rgb.subarray(from, from + width * 3), row * width * 3);
	}
	return { widthPx: width, heightPx: height, rgb: part, alpha: null };
}

describe('the colours of a scene', () => {
	it.each(['i12-river-morning.jpg', 'i13-glazed-bowls.jpg'])(
		'%s: the whole and each quarter lie within 5 of the frame',
		async (name) => {
			const whole = await decoded(name);
			const quarters = [false, true].flatMap((right) => [false, true].map((lower) => quarterOf(whole, right, lower)));
			for (const pixels of [whole, ...quarters]) {
				const swatches = await swatchesIn(pixels);
				expect(apart(swatches, shadesOf([framePixels(pixels)], 64))).toBeLessThanOrEqual(5);
				expect(swatches.length).toBeGreaterThanOrEqual(6);
				expect(swatches.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
				expect(shares(swatches)).toEqual([...shares(swatches)].sort((a, b) => b - a));
			}
		},
	);

	it('keep a small vivid accent: a red buoy of two hundredths on grey water', async () => {
		const [widthPx, heightPx] = [200, 100];
		const rgb = new Uint8Array(widthPx * heightPx * 3);
		for (let at = 0; at < widthPx * heightPx; at++) {
			const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
			const grey = 60 + ((x * 7 + y * 13) % 120);
			rgb.set(x < 20 && y < 20 ? [200, 30, 30] : [grey, grey, grey + 4], at * 3);
		}
		const swatches = await swatchesIn({ widthPx, heightPx, rgb, alpha: null });
		// sRGB 200, 30, 30 is CIELAB 42.1, 62.9, 44.9 (worked out by IEC 61966-2-1 and ISO/CIE 11664-4).
		const red = swatches.find(({ lab }) => deltaE2000(lab, [42.1, 62.9, 44.9]) < 3);
		expect(red?.share).toBeCloseTo(0.02, 2);
	});

	it('are one where the picture has one, and none where all is transparent', async () => {
		const pixels = { widthPx: 8, heightPx: 8, rgb: new Uint8Array(192).fill(120), alpha: null };
		expect(await swatchesIn(pixels)).toHaveLength(1);
		expect(await swatchesIn({ ...pixels, alpha: new Uint8Array(64) })).toEqual([]);
	});
});
