import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp, { type OverlayOptions } from 'sharp';
import { describe, expect, it } from 'vitest';
import { pictureOnScreen } from '../../src/reading/screen-picture.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));

const block = (width: number, height: number, background: string): Promise<Buffer> =>
	sharp({ create: { width, height, channels: 3, background } })
		.png()
		.toBuffer();

/** A phone's screen: a picture at its place, lines of writing above and below it, and a button. */
async function screen(place: { left: number; top: number; width: number; height: number }, page: string, ink: string) {
	const picture = await sharp(demo('c1-river-green-jumper'))
		.resize(place.width, place.height, { fit: 'cover' })
		.toBuffer();
	const parts: OverlayOptions[] = [{ input: picture, left: place.left, top: place.top }];
	for (let line = 0; line < 8; line++)
		for (let letter = 0; letter < 26; letter++)
			parts.push({ input: await block(7, 9, ink), left: 24 + letter * 12, top: 1010 + line * 34 });
	for (let letter = 0; letter < 18; letter++)
		parts.push({ input: await block(7, 9, ink), left: 24 + letter * 12, top: 40 });
	parts.push({ input: await block(400, 80, ink), left: 160, top: 1300 });
	return sharp({ create: { width: 720, height: 1440, channels: 3, background: page } })
		.composite(parts)
		.jpeg({ quality: 80 })
		.toBuffer();
}

async function seenIn(picture: Buffer | string) {
	const { data, info } = await sharp(picture)
		.resize(320, 320, { fit: 'inside' })
		.ensureAlpha()
		.raw()
		.toBuffer({ resolveWithObject: true });
	return pictureOnScreen({ data: new Uint8ClampedArray(data), width: info.width, height: info.height });
}

describe('the picture in a screenshot of an offer', () => {
	it.each([
		['across the whole width of a white page', { left: 0, top: 120, width: 720, height: 860 }, '#ffffff', '#222222'],
		['beside the edges of a dark page', { left: 60, top: 140, width: 600, height: 700 }, '#121212', '#dddddd'],
		['small on a page of its own tint', { left: 40, top: 200, width: 320, height: 420 }, '#f4f1ea', '#444444'],
	])('is found %s', async (_where, place, page, ink) => {
		const box = await seenIn(await screen(place, page, ink));
		expect(box).not.toBeNull();
		const edges = {
			left: place.left / 720,
			top: place.top / 1440,
			right: (place.left + place.width) / 720,
			bottom: (place.top + place.height) / 1440,
		};
		// One square of the small picture is 6 of 320 pixels.
		for (const edge of ['left', 'top', 'right', 'bottom'] as const)
			expect(Math.abs(box![edge] - edges[edge])).toBeLessThan(0.045);
	});

	it('is not looked for in photos: none of the demo is cropped', async () => {
		const folder = fileURLToPath(new URL('../../demo-images/', import.meta.url));
		const photos = readdirSync(folder).filter((name) => name.endsWith('.jpg'));
		expect(photos.length).toBeGreaterThan(20);
		for (const name of photos) expect([name, await seenIn(`${folder}${name}`)]).toEqual([name, null]);
	});

	it('is not found on an empty page, nor in a picture too small to look at', async () => {
		expect(await seenIn(await block(400, 700, '#ffffff'))).toBeNull();
		expect(pictureOnScreen({ data: new Uint8ClampedArray(16), width: 2, height: 2 })).toBeNull();
	});
});
