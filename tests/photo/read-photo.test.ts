import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { hexFromLab, type Lab65 } from '../../src/colour/lab65.ts';
import { type ReadOptions, type ReadSuccess, readPhoto } from '../../src/photo/read-photo.ts';
import { cutOut, plainPng } from '../support/pictures.ts';

async function read(bytes: Uint8Array, options: ReadOptions = {}): Promise<ReadSuccess> {
	const result = await readPhoto(bytes, options);
	if (!result.ok) throw new Error(result.message);
	return result;
}

const rust: Lab65 = [45, 38, 40];
const sumOf = (items: readonly { readonly share: number }[]) => items.reduce((sum, { share }) => sum + share, 0);

describe('reading a photo', () => {
	it('gives the same numbers for the same bytes, every time', async () => {
		const bytes = await cutOut(rust);
		const [one, other] = [
			await read(bytes, { shades: 4, derived: true }),
			await read(bytes, { shades: 4, derived: true }),
		];
		expect({ ...one, ms: 0 }).toEqual({ ...other, ms: 0 });
	});

	it('takes the cloth of a cut-out, whatever the parser thinks of it', async () => {
		const { reading } = await read(await cutOut(rust));
		expect(reading.photoKind).not.toBe('worn');
		expect(deltaE2000(reading.swatches[0]!.lab, rust)).toBeLessThan(3);
	});

	it("lets the user's mask win over everything", async () => {
		const left = await plainPng(200, 400, '#204080');
		const bytes = await sharp({ create: { width: 400, height: 400, channels: 3, background: hexFromLab(rust) } })
			.composite([{ input: left, left: 0, top: 0 }])
			.png()
			.toBuffer();
		const white = await plainPng(100, 200, '#ffffff');
		const mask = await sharp({ create: { width: 200, height: 200, channels: 3, background: '#000000' } })
			.composite([{ input: white, left: 100, top: 0 }])
			.png()
			.toBuffer();
		const { reading } = await read(bytes, { mask });
		expect(reading.swatches).toHaveLength(1);
		expect(deltaE2000(reading.swatches[0]!.lab, rust)).toBeLessThan(3);
	});

	it.each([
		['all black', plainPng(300, 400, '#000000')],
		['all white', plainPng(300, 400, '#ffffff')],
		['one pixel wide', plainPng(1, 4000, '#777777')],
		['one pixel high', plainPng(4000, 1, '#777777')],
		['one pixel', plainPng(1, 1, '#ff8800')],
	])('answers with finite numbers or a reason for a picture that is %s', async (_, picture) => {
		const { reading, shades, at } = await read(await picture, {
			shades: 6,
			at: [
				{ x: 0, y: 0 },
				{ x: 9999, y: 9999 },
			],
			derived: true,
		});
		const numbers = [...reading.swatches, ...shades!]
			.flatMap(({ lab, share }) => [...lab, share])
			.concat(at!.flatMap(({ lab }) => [...lab]));
		expect(numbers.every(Number.isFinite)).toBe(true);
		expect(sumOf(reading.swatches)).toBeCloseTo(1, 9);
		expect(sumOf(shades!)).toBeCloseTo(1, 9);
	});

	it('says so where all of the picture is transparent', async () => {
		const bytes = await sharp({
			create: { width: 50, height: 50, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } },
		})
			.png()
			.toBuffer();
		expect(await readPhoto(bytes)).toMatchObject({ ok: false, reason: 'not-a-photo' });
	});

	it('says so where the file is not there', async () => {
		expect(await readPhoto('no-such-photo.jpg')).toMatchObject({ ok: false, reason: 'missing' });
	});

	it('takes the lamp out where the user points at white paper', async () => {
		// Paper of lightness 95 and a grey of 50 under a warm lamp: the paper looks L* 85, a* 6, b* 24.
		const paper = await plainPng(100, 100, hexFromLab([85, 6, 24]));
		const grey = hexFromLab([44.2, 3.4, 14.1]);
		const bytes = await sharp({ create: { width: 300, height: 300, channels: 3, background: grey } })
			.composite([{ input: paper, left: 0, top: 0 }])
			.png()
			.toBuffer();
		const at = [{ x: 200, y: 200 }];
		const { at: points, reading } = await read(bytes, { at, correction: { neutral: { x: 50, y: 50, lightness: 95 } } });
		expect(reading.light.source).toBe('neutral-pointed');
		expect(deltaE2000(points![0]!.uncorrected, [44.2, 3.4, 14.1])).toBeLessThan(1);
		expect(Math.hypot(points![0]!.lab[1], points![0]!.lab[2])).toBeLessThan(2);
		expect(points![0]!.lab[0]).toBeGreaterThan(47);
	});

	it('keeps the uncorrected colours beside the corrected ones', async () => {
		const { reading } = await read(await cutOut(rust), { correction: { byHand: { warmer: 3, lighter: 1 } } });
		expect(reading.uncorrected).toHaveLength(reading.swatches.length);
		expect(reading.swatches[0]!.lab[2]).toBeGreaterThan(reading.uncorrected[0]![2]);
		expect(reading.light.source).toBe('by-hand');
	});
});
