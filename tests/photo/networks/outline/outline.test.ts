import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { decodePhoto } from '../../../../src/photo/file/decode.ts';
import { parsePhoto } from '../../../../src/photo/networks/outline/parser.ts';
import { outlineOf } from '../../../../src/reading/outline/outline.ts';
import { isClothes, type Pixels } from '../../../../src/reading/pixels.ts';

/** Rendered garments with the true mask of each: fixtures/renders/README.md. Close-ups of cloth show no garment, so they have no outline. */
const RENDERS = fileURLToPath(new URL('../../../../fixtures/renders/', import.meta.url));
const GARMENTS = /-(shirt|trousers|skirt|jumper|dress)\.jpg$/;

async function decoded(path: string): Promise<Pixels> {
	const photo = await decodePhoto(await sharp(path).toBuffer());
	if (!photo.ok) throw new Error(photo.message);
	return photo.analysis;
}

/** Intersection over union of the outline taken and the true mask. */
async function overlap(name: string): Promise<number> {
	const pixels = await decoded(RENDERS + name);
	const mask = await sharp(RENDERS + name.replace('.jpg', '.mask.png'))
		.resize(pixels.widthPx, pixels.heightPx, { fit: 'fill', kernel: 'nearest' })
		.greyscale()
		.raw()
		.toBuffer();
	const { labels } = outlineOf(pixels, await parsePhoto(pixels), null);
	let [both, either] = [0, 0];
	for (let i = 0; i < mask.length; i++) {
		const [isTrue, isTaken] = [mask[i]! > 127, isClothes(labels.classes[i]!)];
		if (isTrue && isTaken) both++;
		if (isTrue || isTaken) either++;
	}
	return both / either;
}

/** A picture of one colour with a square of another in the middle. */
function square(ground: readonly number[], cloth: readonly number[], widthPx: number, heightPx: number): Pixels {
	const rgb = new Uint8Array(widthPx * heightPx * 3);
	for (let y = 0, at = 0; y < heightPx; y++)
		for (let x = 0; x < widthPx; x++, at += 3) {
			const inside = Math.abs(x / widthPx - 0.5) < 0.25 && Math.abs(y / heightPx - 0.5) < 0.25;
			rgb.set(inside ? cloth : ground, at);
		}
	return { widthPx, heightPx, rgb, alpha: null };
}

describe('the outline of a garment', () => {
	let overlaps: number[];
	beforeAll(async () => {
		overlaps = [];
		for (const name of readdirSync(RENDERS).filter((file) => GARMENTS.test(file))) overlaps.push(await overlap(name));
		overlaps.sort((a, b) => a - b);
	});

	it('covers nine tenths of a typical rendered garment and little else', () => {
		expect(overlaps.length).toBeGreaterThan(20);
		expect(overlaps[Math.floor(overlaps.length / 2)]).toBeGreaterThan(0.9);
	});

	it('is badly wrong on one rendered garment in ten at most', () => {
		expect(overlaps.filter((value) => value < 0.75).length).toBeLessThanOrEqual(overlaps.length / 10);
	});

	it.each([
		['very tall', 1, 4000],
		['very wide', 4000, 1],
		['one pixel', 1, 1],
		['tiny', 5, 3],
		['all one colour', 300, 400],
	])('comes with every pixel labelled for a picture that is %s', async (_, widthPx, heightPx) => {
		const pixels = square([90, 90, 90], [90, 90, 90], widthPx, heightPx);
		const outline = outlineOf(pixels, await parsePhoto(pixels), null);
		expect(outline.labels.classes).toHaveLength(widthPx * heightPx);
		expect(outline.labels.classes.every((label) => label <= 9)).toBe(true);
	});
});
