import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { withoutBoldGround } from '../../../src/reading/outline/bold-ground.ts';
import type { LabelMap, Pixels } from '../../../src/reading/pixels.ts';
import { deterministicNoise } from '../../support/noise.ts';

/** Our renders of garments whose true outline is known (fixtures/grounds); the green bed is a bold ground, oak planks are not bold enough to tell. */
const folder = new URL('../../../fixtures/grounds/', import.meta.url);
type Shot = { readonly file: string; readonly maskFile: string; readonly ground: string };
const shots = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as Shot[];

async function shotOf({ file, maskFile }: Shot): Promise<{ readonly pixels: Pixels; readonly truth: Uint8Array }> {
	const raw = (name: string, space: 'srgb' | 'b-w') =>
		sharp(fileURLToPath(new URL(name, folder)))
			.toColourspace(space)
			.raw()
			.toBuffer({ resolveWithObject: true });
	const [picture, mask] = await Promise.all([raw(file, 'srgb'), raw(maskFile, 'b-w')]);
	const pixels = {
		widthPx: picture.info.width,
		heightPx: picture.info.height,
		rgb: new Uint8Array(picture.data),
		alpha: null,
	};
	return { pixels, truth: Uint8Array.from(mask.data, (value) => (value >= 128 ? 1 : 0)) };
}

const areaOf = (classes: Uint8Array): number => classes.reduce((sum, label) => sum + (label === 1 ? 1 : 0), 0);

/** The outline with the ground left of the garment's middle taken for cloth. */
function withGround({ widthPx, heightPx }: Pixels, truth: Uint8Array): Uint8Array {
	const grown = truth.slice();
	const wanted = areaOf(truth) * 1.4;
	for (let row = Math.round(heightPx * 0.4), area = areaOf(truth); row < heightPx * 0.9 && area < wanted; row++)
		for (
			let at = row * widthPx + Math.round(widthPx * 0.12);
			truth[at] !== 1 && at < (row + 1) * widthPx * 0.999;
			at++
		) {
			if (at % widthPx > widthPx / 2) break;
			grown[at] = 1;
			area++;
		}
	return grown;
}

const labelsOf = ({ widthPx, heightPx }: Pixels, classes: Uint8Array): LabelMap => ({ widthPx, heightPx, classes });

/** Share of the pixels that either of two outlines holds and both do. */
function overlap(one: Uint8Array, other: Uint8Array): number {
	let [both, any] = [0, 0];
	for (let at = 0; at < one.length; at++) {
		if (one[at] === 1 && other[at] === 1) both++;
		if (one[at] === 1 || other[at] === 1) any++;
	}
	return both / any;
}

const [WIDTH, HEIGHT] = [240, 320];
type Rgb = readonly [number, number, number];
/** A sheet with something on it: the colour of each place. */
function painted(at: (x: number, y: number) => Rgb): Pixels {
	const next = deterministicNoise(7);
	const rgb = new Uint8Array(WIDTH * HEIGHT * 3);
	for (let y = 0; y < HEIGHT; y++)
		for (let x = 0; x < WIDTH; x++) {
			const fold = 1 + 0.05 * Math.sin(x / 17 + y / 29);
			for (const [k, value] of at(x, y).entries())
				rgb[(y * WIDTH + x) * 3 + k] = Math.min(255, Math.max(0, value * fold + 6 * (next() - 0.5)));
		}
	return { widthPx: WIDTH, heightPx: HEIGHT, rgb, alpha: null };
}
const RED: Rgb = [190, 30, 45];
const GREY: Rgb = [120, 120, 122];
const inBody = (x: number, y: number) => x > 80 && x < 170 && y > 60 && y < 280;
const body = Uint8Array.from({ length: WIDTH * HEIGHT }, (_, at) =>
	inBody(at % WIDTH, Math.floor(at / WIDTH)) ? 1 : 0,
);

describe('what was taken for cloth and is the bold ground', () => {
	it('leaves the outline of renders on a bold bed, and nothing else does', async () => {
		for (const shot of shots.filter(({ ground }) => ground === 'green bed')) {
			const { pixels, truth } = await shotOf(shot);
			const wrong = withGround(pixels, truth);
			expect(overlap(wrong, truth), shot.file).toBeLessThan(0.93);
			const without = overlap(withoutBoldGround(pixels, labelsOf(pixels, wrong)).classes, truth);
			// A moss jumper on the green bed has no edge to it in places.
			expect(without, shot.file).toBeGreaterThan(shot.file.includes('g03') ? overlap(wrong, truth) - 0.01 : 0.95);
			const labels = labelsOf(pixels, truth);
			expect(overlap(withoutBoldGround(pixels, labels).classes, truth), shot.file).toBeGreaterThan(0.97);
		}
	}, 60_000);

	it('is a red sheet beside a grey T-shirt, a third of the outline', () => {
		const pixels = painted((x, y) => (inBody(x, y) ? GREY : RED));
		const wrong = body.map((value, at) => {
			const [x, y] = [at % WIDTH, Math.floor(at / WIDTH)];
			return value === 1 || (x >= 170 && x < 215 && y > 60 && y < 280) ? 1 : 0;
		});
		expect(overlap(wrong, body)).toBeLessThan(0.7);
		expect(overlap(withoutBoldGround(pixels, labelsOf(pixels, wrong)).classes, body)).toBeGreaterThan(0.97);
	});

	it.each<[string, (x: number, y: number) => Rgb]>([
		['a garment in the colour of its ground', () => RED],
		['red stripes with an edge to the red sheet', (x, y) => (!inBody(x, y) ? RED : y % 40 < 20 ? [160, 20, 60] : GREY)],
		['a red print inside it', (x, y) => (inBody(x, y) && !(x > 110 && x < 140 && y > 120 && y < 180) ? GREY : RED)],
		[
			'a garment on a dull sheet of its own colour',
			(x, y) => (inBody(x, y) && y < 170 ? [60, 70, 120] : [150, 140, 130]),
		],
	])('is not %s', (_, at) => {
		const labels = labelsOf({ widthPx: WIDTH, heightPx: HEIGHT, rgb: new Uint8Array(), alpha: null }, body);
		expect(overlap(withoutBoldGround(painted(at), labels).classes, body)).toBeGreaterThan(0.99);
	});
});
