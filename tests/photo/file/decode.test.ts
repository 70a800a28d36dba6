import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { labFromSrgb8 } from '../../../src/colour/lab65.ts';
import { decodePhoto } from '../../../src/photo/file/decode.ts';
import { MAX_PHOTO_BYTES } from '../../../src/photo/file/limits.ts';
import type { Pixels } from '../../../src/reading/pixels.ts';
import { plainPng } from '../../support/pictures.ts';

const middle = ({ widthPx, heightPx, rgb }: Pixels) => {
	const at = (Math.floor(heightPx / 2) * widthPx + Math.floor(widthPx / 2)) * 3;
	return labFromSrgb8(rgb[at]!, rgb[at + 1]!, rgb[at + 2]!);
};

async function decoded(bytes: Uint8Array) {
	const photo = await decodePhoto(bytes);
	if (!photo.ok) throw new Error(photo.message);
	return photo;
}

const teal = { r: 30, g: 120, b: 130 };
const tealLab = labFromSrgb8(30, 120, 130);
const teals = () => sharp({ create: { width: 60, height: 40, channels: 3, background: teal } });

describe('decoding', () => {
	it.each([
		['JPEG', () => teals().jpeg({ quality: 95 }).toBuffer()],
		['PNG', () => teals().png().toBuffer()],
		['16-bit PNG', () => teals().toColourspace('rgb16').png().toBuffer()],
		['palette PNG', () => teals().png({ palette: true }).toBuffer()],
		['WebP', () => teals().webp({ lossless: true }).toBuffer()],
		['AVIF', () => teals().avif({ quality: 90 }).toBuffer()],
		['TIFF', () => teals().tiff().toBuffer()],
		['GIF', () => teals().gif().toBuffer()],
		['CMYK JPEG', () => teals().toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer()],
	])('reads the colour of a %s', async (name, make) => {
		const photo = await decoded(await make());
		expect([photo.widthPx, photo.heightPx]).toEqual([60, 40]);
		// CMYK has its own, smaller gamut: the journey there and back costs a little more.
		expect(deltaE2000(middle(photo.display), tealLab)).toBeLessThan(name === 'CMYK JPEG' ? 6 : 1.5);
	});

	it('turns a photo upright by its EXIF orientation', async () => {
		const left = await plainPng(20, 20, '#ff0000');
		const bytes = await sharp({ create: { width: 60, height: 20, channels: 3, background: '#0000ff' } })
			.composite([{ input: left, left: 0, top: 0 }])
			.withMetadata({ orientation: 6 })
			.jpeg({ quality: 95 })
			.toBuffer();
		const { display, widthPx, heightPx } = await decoded(bytes);
		expect([widthPx, heightPx]).toEqual([20, 60]);
		// Orientation 6 (EXIF 2.32, table 4): the first column of the file is the top of the picture.
		expect(display.rgb[(5 * 20 + 10) * 3]).toBeGreaterThan(200);
		expect(display.rgb[(40 * 20 + 10) * 3]).toBeLessThan(60);
	});

	it('converts a Display P3 picture to sRGB by its profile', async () => {
		const bytes = await teals().withIccProfile('p3').png().toBuffer();
		expect(deltaE2000(middle((await decoded(bytes)).display), tealLab)).toBeLessThan(1);
	});

	it('reads a photo whose colour profile is damaged', async () => {
		const bytes = await teals().withIccProfile('p3').jpeg().toBuffer();
		const at = bytes.indexOf('ICC_PROFILE');
		bytes.fill(0x55, at + 20, at + 200);
		expect(deltaE2000(middle((await decoded(bytes)).display), tealLab)).toBeLessThan(8);
	});

	it('takes the first frame of a moving picture', async () => {
		const frames = await Promise.all(['#ff0000', '#0000ff'].map((colour) => plainPng(30, 30, colour)));
		const bytes = await sharp(frames, { join: { animated: true } })
			.gif()
			.toBuffer();
		const { display, heightPx } = await decoded(bytes);
		expect(heightPx).toBe(30);
		expect(display.rgb[0]).toBeGreaterThan(200);
	});

	it('keeps transparency as a mask', async () => {
		const bytes = await sharp({ create: { width: 10, height: 10, channels: 4, background: { ...teal, alpha: 0 } } })
			.png()
			.toBuffer();
		expect((await decoded(bytes)).display.alpha?.every((alpha) => alpha === 0)).toBe(true);
		expect((await decoded(await plainPng(10, 10, '#123456'))).display.alpha).toBeNull();
	});

	it('tells a camera from a phone by maker and model', async () => {
		const by = async (Make: string, Model: string) =>
			(await decoded(await teals().withExif({ IFD0: { Make, Model } }).jpeg().toBuffer())).camera;
		expect(await by('Canon', 'Canon EOS 6D')).toBe('camera');
		expect(await by('Apple', 'iPhone 13')).toBe('phone');
	});

	it('keeps the date of the photo and nothing else of its EXIF', async () => {
		const bytes = await teals()
			.withExif({
				IFD0: { Make: 'x' },
				IFD2: { DateTimeOriginal: '2026:03:14 09:26:53' },
				IFD3: { GPSLatitude: '51/1 30/1 0/1' },
			})
			.jpeg()
			.toBuffer();
		const photo = await decoded(bytes);
		expect(photo.takenAt).toBe('2026-03-14T09:26:53');
		expect(JSON.stringify({ ...photo, display: null, analysis: null })).not.toContain('51');
	});

	it('reads extreme shapes', async () => {
		const photo = await decoded(await plainPng(1, 4000, '#888888'));
		expect(photo.analysis.widthPx).toBeGreaterThanOrEqual(1);
	});
});

describe('what is no photo', () => {
	const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><rect width="10" height="10"/></svg>';
	it.each([
		['an empty file', async () => new Uint8Array(), 'empty'],
		['a text file named .jpg', async () => new TextEncoder().encode('shopping list'.repeat(50)), 'not-a-photo'],
		['an SVG', async () => new TextEncoder().encode(svg), 'unsupported'],
		['an SVG behind an XML head', async () => new TextEncoder().encode(`<?xml version="1.0"?>\n${svg}`), 'unsupported'],
		['a PDF', async () => new TextEncoder().encode('%PDF-1.7\n%âãÏÓ\n'), 'unsupported'],
		[
			'a JPEG cut off in the middle',
			async () =>
				(
					await sharp(await plainPng(800, 800, '#445566'))
						.jpeg()
						.toBuffer()
				).subarray(0, 3000),
			'damaged',
		],
		['more bytes than any photo has', async () => new Uint8Array(MAX_PHOTO_BYTES + 1), 'too-many-bytes'],
	])('is refused with a reason: %s', async (_, make, reason) => {
		const result = await decodePhoto(await make());
		expect(result).toMatchObject({ ok: false, reason });
		expect((result as { message: string }).message).toMatch(/^Expected .+; .+\.$/);
	});

	it('is refused before it is unpacked: a picture of 30,000 x 30,000 pixels', async () => {
		// The head of a PNG says its size (PNG specification, IHDR); nothing behind it is needed to refuse it.
		const png = await plainPng(8, 8, '#000000');
		png.writeUInt32BE(30_000, 16);
		png.writeUInt32BE(30_000, 20);
		const { crc32 } = await import('node:zlib').then((zlib) => ({
			crc32: (zlib as { crc32?: (data: Uint8Array) => number }).crc32 ?? crcOf,
		}));
		png.writeUInt32BE(crc32(png.subarray(12, 29)), 29);
		expect(await decodePhoto(png)).toMatchObject({ ok: false, reason: 'too-many-pixels' });
	});
});

/** CRC-32 of the PNG specification, annex D. */
function crcOf(data: Uint8Array): number {
	let crc = 0xffffffff;
	for (const byte of data) {
		crc ^= byte;
		for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
	}
	return (crc ^ 0xffffffff) >>> 0;
}

describe('HEIC', () => {
	const fixture = (name: string) => readFileSync(`fixtures/heic/${name}`);
	it.each(['teal-p3.heic', 'teal-srgb.heic'])('of a phone comes out in true colour: %s', async (name) => {
		const photo = await decoded(fixture(name));
		expect(deltaE2000(middle(photo.display), tealLab)).toBeLessThan(3);
	});

	it('of a phone held upright is turned once, keeps its date and loses its position', async () => {
		const { display, widthPx, heightPx, takenAt } = await decoded(fixture('turned.heic'));
		expect([widthPx, heightPx, takenAt]).toEqual([64, 128, '2026-03-14T09:26:53']);
		const at = (y: number) =>
			labFromSrgb8(...([...display.rgb.subarray((y * 64 + 32) * 3).subarray(0, 3)] as [number, number, number]));
		expect(deltaE2000(at(20), labFromSrgb8(0xd2, 0x69, 0x1e))).toBeLessThan(3);
		expect(deltaE2000(at(108), tealLab)).toBeLessThan(3);
	});

	it('file holding an AV1 picture is read too', async () => {
		const avif = await teals().avif({ quality: 90 }).toBuffer();
		// Some programs write AVIF under the general brand of HEIF (ISO/IEC 23008-12, 10.2); file names and brands then say HEIF.
		avif.write('mif1', 8, 'latin1');
		expect(deltaE2000(middle((await decoded(avif)).display), tealLab)).toBeLessThan(1.5);
	});

	it('without pixels is refused with a reason', async () => {
		expect(await decodePhoto(fixture('teal-srgb.heic').subarray(0, 400))).toMatchObject({
			ok: false,
			reason: 'damaged',
		});
	});
});
