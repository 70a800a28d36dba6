import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../../src/reading/outline/outline.ts';
import type { Parse } from '../../../src/reading/outline/parse.ts';
import type { Pixels } from '../../../src/reading/pixels.ts';

const [widthPx, heightPx] = [40, 60];
const inMiddle = (at: number): boolean =>
	at % widthPx >= 10 && at % widthPx < 30 && at >= 15 * widthPx && at < 45 * widthPx;
const block = (inside: number, outside: number) =>
	Uint8Array.from({ length: widthPx * heightPx }, (_, at) => (inMiddle(at) ? inside : outside));
const colours = block(200, 90);
const pixels: Pixels = {
	widthPx,
	heightPx,
	rgb: Uint8Array.from({ length: colours.length * 3 }, (_, i) => colours[Math.floor(i / 3)]!),
	alpha: null,
};
const parseWith = (noPieces: number, sureOfKind: number): Parse => ({
	widthPx,
	heightPx,
	classes: block(1, 0),
	clothes: block(250, 5),
	photoKind: [0.01, 0.98, 0.01],
	garmentKind: [sureOfKind, 1 - sureOfKind],
	noPieces,
	several: 0,
});

describe('a picture that may show nothing to tell piece by piece', () => {
	it.each([
		['likely something', 0.3, 0.4, 'single'],
		['likely nothing', 0.8, 0.4, 'scene'],
		['likely nothing, but surely like one kind of garment', 0.8, 0.95, 'single'],
		['surely nothing, whatever it looks like', 0.95, 0.95, 'scene'],
	] as const)('shows %s', (_, noPieces, sureOfKind, photoKind) => {
		expect(outlineOf(pixels, parseWith(noPieces, sureOfKind), null).photoKind).toBe(photoKind);
	});

	it('is a garment where somebody cut it out or drew its outline', () => {
		const parse = parseWith(0.99, 0.4);
		expect(outlineOf({ ...pixels, alpha: block(255, 0) }, parse, null).photoKind).toBe('single');
		expect(outlineOf(pixels, parse, block(1, 0)).photoKind).toBe('single');
	});
});
