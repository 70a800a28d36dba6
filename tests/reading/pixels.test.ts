import { describe, expect, it } from 'vitest';
import { areaByMark, BACKGROUND, type Pixels, seenClasses, TRANSPARENT } from '../../src/reading/pixels.ts';

describe('the area of each mark', () => {
	it('is its number of pixels, and nothing for marks that are not there', () => {
		const areas = areaByMark(Uint8Array.of(7, 255, 7, 0, 7));
		expect([areas[7], areas[255], areas[0], areas[1]]).toEqual([3, 1, 1, 0]);
		expect(areaByMark(new Uint8Array(0))).toEqual(new Uint32Array(256));
	});
});

describe('what is seen of the classes', () => {
	const size = { widthPx: 3, heightPx: 1 };
	const labels = { ...size, classes: Uint8Array.of(2, BACKGROUND, 2) };
	const pixels: Pixels = { ...size, rgb: new Uint8Array(9), alpha: null };

	it('is all of them in a picture without transparency', () => {
		expect(seenClasses(pixels, labels)).toBe(labels.classes);
	});

	it('leaves out pixels that are less than half opaque', () => {
		const alpha = Uint8Array.of(128, 127, 0);
		expect([...seenClasses({ ...pixels, alpha }, labels)]).toEqual([2, TRANSPARENT, TRANSPARENT]);
	});
});
