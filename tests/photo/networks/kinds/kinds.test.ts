import { readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { frameMask } from '../../../../src/photo/networks/kinds/frame-mask.ts';
import { kindsOfPieces } from '../../../../src/photo/networks/kinds/kinds.ts';
import { MASK_HEIGHT, MASK_WIDTH } from '../../../../src/photo/networks/kinds/kinds-network.ts';
import { parsePhoto } from '../../../../src/photo/networks/outline/parser.ts';
import { type MarkedPiece, markedPieces } from '../../../../src/reading/kinds/marked-pieces.ts';
import { TOLD_KINDS } from '../../../../src/reading/kinds/told-kinds.ts';
import type { OutlinePicture } from '../../../../src/reading/outline/outline-picture.ts';
import type { LabelMap, Pixels } from '../../../../src/reading/pixels.ts';

const MODEL = fileURLToPath(new URL('../../../../src/photo/networks/kinds/kinds.onnx', import.meta.url));

const [widthPx, heightPx] = [120, 180];
/** Noise, which shows nothing: what is said of it must still be numbers. */
const pixels: Pixels = {
	widthPx,
	heightPx,
	rgb: Uint8Array.from({ length: widthPx * heightPx * 3 }, (_, i) => (Math.imul(i, 2654435761) >>> 24) & 255),
	alpha: null,
};
const rectangle = (left: number, top: number, right: number, bottom: number): Uint8Array =>
	Uint8Array.from({ length: widthPx * heightPx }, (_, at) => {
		const [x, y] = [at % widthPx, Math.floor(at / widthPx)];
		return x >= left && x < right && y >= top && y < bottom ? 1 : 0;
	});
const [body, legs] = [rectangle(30, 30, 90, 80), rectangle(35, 80, 85, 130)];
const labels: LabelMap = {
	widthPx,
	heightPx,
	classes: body.map((mark, at) => (mark === 1 ? 1 : legs[at] === 1 ? 3 : 0)),
};
const [top, skirt] = markedPieces(labels) as [MarkedPiece, MarkedPiece];

describe('the network of kinds as it ships', () => {
	let picture: OutlinePicture;
	beforeAll(async () => {
		picture = (await parsePhoto(pixels)).picture;
	});

	it('weighs 3 MB at most', () => {
		expect(statSync(MODEL).size).toBeLessThanOrEqual(3e6);
	});

	it('tells the kinds in the order in which it learnt them', () => {
		const report = JSON.parse(
			readFileSync(new URL('../../../../src/photo/networks/kinds/training-report.json', import.meta.url), 'utf8'),
		) as {
			kinds: string[];
		};
		expect([...TOLD_KINDS.map(({ kind }) => kind ?? 'other-accessory'), 'none']).toEqual(report.kinds);
	});

	it('answers with numbers, and the same every time', async () => {
		const told = await kindsOfPieces(pixels, labels, [top, skirt], picture);
		expect(told).toHaveLength(2);
		for (const { kinds, nothing } of told) {
			const sum = kinds.reduce((total, { probability }) => total + probability, nothing);
			expect(sum).toBeGreaterThan(0);
			expect(sum).toBeLessThanOrEqual(1 + 1e-6);
		}
		expect(await kindsOfPieces(pixels, labels, [top, skirt], picture)).toEqual(told);
	});

	it('says of each piece what it says of it alone', async () => {
		const [together] = await kindsOfPieces(pixels, labels, [top, skirt], picture);
		const [alone] = await kindsOfPieces(pixels, labels, [top], picture);
		expect(together!.kinds[0]!.kind).toBe(alone!.kinds[0]!.kind);
		expect(together!.kinds[0]!.probability).toBeCloseTo(alone!.kinds[0]!.probability, 4);
	});

	it('hears the slot that somebody has told', async () => {
		const [told] = await kindsOfPieces(pixels, labels, [{ ...top, slotTold: true }], picture);
		const sum = told!.kinds.reduce((total, { probability }) => total + probability, 0);
		expect(sum).toBeGreaterThan(0.9);
		for (const { kind } of told!.kinds) expect(['t-shirt', 'top', 'shirt', 'jumper']).toContain(kind);
	});

	it('has nothing to say of no piece, and takes a piece of one pixel', async () => {
		expect(await kindsOfPieces(pixels, labels, [], picture)).toEqual([]);
		const speck: MarkedPiece = { slot: 'accessory', marks: rectangle(60, 20, 61, 21), area: 1 };
		const [told] = await kindsOfPieces(pixels, labels, [speck], picture);
		expect(told!.nothing).toBeGreaterThanOrEqual(0);
	});
});

describe('a piece within the whole photo', () => {
	it('keeps its share of the photo, and lies where the photo lies', () => {
		const frame = { left: 0.25, top: 0, widthPx: 0.5, heightPx: 1 };
		const mask = frameMask(rectangle(0, 0, 60, 180), widthPx, frame);
		// The left half of a photo that fills the middle half of the frame.
		let inside = 0;
		for (let at = 0; at < mask.length; at++) {
			const x = (at % MASK_WIDTH) / MASK_WIDTH;
			if (mask[at]! > 0) expect(x >= 0.25 && x < 0.5).toBe(true);
			inside += mask[at]!;
		}
		expect(inside / (MASK_WIDTH * MASK_HEIGHT)).toBeCloseTo(0.25, 2);
	});
});
