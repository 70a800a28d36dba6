import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parserNetwork } from '../../../../src/photo/networks/outline/parser-network.ts';
import { CLASSES } from '../../../../src/reading/pixels.ts';

const MODEL = fileURLToPath(new URL('../../../../src/photo/networks/outline/outline.onnx', import.meta.url));

const pictures: readonly (readonly [name: string, value: (i: number) => number])[] = [
	['all black', () => 0],
	['all white', () => 255],
	['one grey', () => 119],
	['noise', (i) => (Math.imul(i, 2654435761) >>> 24) & 255],
];

describe('the garment parser as it ships', () => {
	it('weighs 4 MB at most', () => {
		expect(statSync(MODEL).size).toBeLessThanOrEqual(4e6);
	});

	it.each(pictures)('answers a picture that is %s with finite scores for every class and kind', async (_, value) => {
		const network = await parserNetwork();
		const answer = await network.run(
			Uint8Array.from({ length: network.widthPx * network.heightPx * 3 }, (_, i) => value(i)),
		);
		expect(answer.classCount).toBe(CLASSES.length);
		expect(answer.logits).toHaveLength(CLASSES.length * answer.widthPx * answer.heightPx);
		expect(answer.widthPx / answer.heightPx).toBeCloseTo(network.widthPx / network.heightPx, 6);
		expect(answer.photoKind).toHaveLength(3);
		expect(answer.garmentKind).toHaveLength(14);
		for (const scores of [answer.logits, answer.photoKind, answer.garmentKind, [answer.noPieces, answer.several]])
			expect(scores.every(Number.isFinite)).toBe(true);
	});

	it('says the same of the same picture every time', async () => {
		const network = await parserNetwork();
		const picture = Uint8Array.from({ length: network.widthPx * network.heightPx * 3 }, (_, i) => i % 251);
		expect(await network.run(picture)).toEqual(await network.run(picture));
	});
});
