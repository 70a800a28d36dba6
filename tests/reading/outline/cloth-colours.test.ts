import { describe, expect, it } from 'vitest';
import { labelsByColour } from '../../../src/reading/outline/cloth-colours.ts';
import { isClothes, type Pixels } from '../../../src/reading/pixels.ts';

const WIDTH = 120;
const HEIGHT = 160;
const isMiddle = (x: number, y: number) => Math.abs(x - WIDTH / 2) < 30 && Math.abs(y - HEIGHT / 2) < 40;

/** What is clothes (1, else 0) by a network's answer and the colours. */
function clothesByColour(pixels: Pixels, clothes: Uint8Array): Uint8Array {
	const { widthPx, heightPx } = pixels;
	const classes = clothes.map((value) => (value > 127 ? 1 : 0));
	const parse = {
		widthPx,
		heightPx,
		classes,
		clothes,
		photoKind: [0, 1, 0],
		garmentKind: [],
		noPieces: 0,
		several: 0,
	} as const;
	return labelsByColour(pixels, parse, 1).classes.map((label) => (isClothes(label) ? 1 : 0));
}

/** A garment (the middle) on a ground. */
function photo(ground: readonly number[], cloth: readonly number[]): Pixels {
	const rgb = new Uint8Array(WIDTH * HEIGHT * 3);
	for (let y = 0, at = 0; y < HEIGHT; y++)
		for (let x = 0; x < WIDTH; x++, at += 3) rgb.set(isMiddle(x, y) ? cloth : ground, at);
	return { widthPx: WIDTH, heightPx: HEIGHT, rgb, alpha: null };
}

/** A network's answer: the probability of clothes at each place, 0..255. */
const said = (probability: (x: number, y: number) => number): Uint8Array =>
	Uint8Array.from({ length: WIDTH * HEIGHT }, (_, i) => probability(i % WIDTH, Math.floor(i / WIDTH)));

/** Share of pixels on the right side of one half. */
function rightShare(clothes: Uint8Array): number {
	let right = 0;
	for (let y = 0, at = 0; y < HEIGHT; y++)
		for (let x = 0; x < WIDTH; x++, at++) if ((clothes[at] === 1) === isMiddle(x, y)) right++;
	return right / clothes.length;
}

describe('an outline corrected by colour', () => {
	it('lets go of a strip of the bed that was taken for the garment', () => {
		const withStrip = said((x, y) => (isMiddle(x, y) ? 240 : x > WIDTH / 2 && y > HEIGHT * 0.6 ? 180 : 10));
		const before = rightShare(withStrip);
		const after = rightShare(clothesByColour(photo([200, 40, 40], [30, 40, 90]), withStrip));
		expect(before).toBeLessThan(0.9);
		expect(after).toBeGreaterThan(0.97);
	});

	it('takes in a part of the garment that was doubted', () => {
		const halfSeen = said((x, y) => (isMiddle(x, y) ? (y < HEIGHT / 2 ? 240 : 100) : 10));
		expect(rightShare(clothesByColour(photo([210, 200, 180], [30, 90, 60]), halfSeen))).toBeGreaterThan(0.97);
	});

	it('stays as it was where garment and ground have the same colour', () => {
		const seen = said((x, y) => (isMiddle(x, y) ? 230 : 20));
		expect(rightShare(clothesByColour(photo([240, 240, 238], [240, 240, 238]), seen))).toBeGreaterThan(0.99);
	});

	it.each([0, 255])('says something of each pixel where nothing but %i was said', (value) => {
		const out = clothesByColour(
			photo([10, 20, 30], [200, 100, 50]),
			said(() => value),
		);
		expect(out).toHaveLength(WIDTH * HEIGHT);
	});

	it.each([
		[1, 4000],
		[4000, 1],
		[1, 1],
		[3, 5],
	])('works on a picture of %i x %i', (widthPx, heightPx) => {
		const pixels: Pixels = { widthPx, heightPx, rgb: new Uint8Array(widthPx * heightPx * 3).fill(77), alpha: null };
		const out = clothesByColour(pixels, new Uint8Array(widthPx * heightPx).fill(200));
		expect(out).toHaveLength(widthPx * heightPx);
	});
});
