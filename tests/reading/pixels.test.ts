import { describe, expect, it } from 'vitest';
import { areaByMark, BACKGROUND, type Pixels, seenClasses, TRANSPARENT } from '../../src/reading/pixels.ts';

/** Runs of marks, some longer than four and some shorter. */
const marks = Uint8Array.from({ length: 1003 }, (_, i) => (i % 7 < 3 ? 255 : Math.floor(i / 50) % 4));

describe('the area of each mark', () => {
	it.each([0, 1, 2, 3, 998])('is what counting one by one gives, from pixel %i on', (start) => {
		const part = marks.subarray(start);
		const counted = new Uint32Array(256);
		for (const mark of part) counted[mark]!++;
		expect(areaByMark(part)).toEqual(counted);
	});

	it('is nothing for no pixels', () => {
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
