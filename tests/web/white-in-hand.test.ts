import { describe, expect, it } from 'vitest';
import type { Pixels } from '../../src/reading/pixels.ts';
import { readingInHand } from '../../web/pocket/reading-in-hand.ts';
import { whiteInHand } from '../../web/pocket/white-question.ts';

const [WIDTH, HEIGHT] = [400, 300];

/** A shop photo, invented: a piece of one colour at the right on a grey-brown shelf, something tapped at the left. */
function shelf(tapped: readonly number[], piece: readonly number[]): { pixels: Pixels; mask: Uint8Array } {
	const rgb = new Uint8Array(WIDTH * HEIGHT * 3);
	const mask = new Uint8Array(WIDTH * HEIGHT);
	for (let at = 0; at < mask.length; at++) {
		const [x, y] = [at % WIDTH, Math.floor(at / WIDTH)];
		const isTapped = x > 40 && x < 120 && y > 80 && y < 200;
		const isPiece = x > 200 && x < 360 && y > 40 && y < 260;
		if (isPiece) mask[at] = 1;
		const grain = (at * 7) % 5;
		rgb.set(
			(isTapped ? tapped : isPiece ? piece : [88, 82, 74]).map((value) => Math.min(255, value + grain)),
			at * 3,
		);
	}
	return { pixels: { widthPx: WIDTH, heightPx: HEIGHT, rgb, alpha: null }, mask };
}

const AT = { x: 80, y: 140, lightness: 95 };
const TEAL = [40, 110, 115];

describe('the white tapped on the pocket page', () => {
	it('is taken where it is paper, and corrects the piece as at home', () => {
		const { pixels, mask } = shelf([230, 226, 214], TEAL);
		expect(whiteInHand({ pixels, camera: 'phone' }, AT, null).answer).toBe('taken');
		const read = readingInHand({ pixels, camera: 'phone' }, mask, 'shirt', [AT])!;
		expect(read.light.source).toBe('neutral-pointed');
	});

	it('is refused where it is an orange cardigan: nothing is corrected, and nothing counts as surer', () => {
		const { pixels, mask } = shelf([214, 120, 52], TEAL);
		const judged = whiteInHand({ pixels, camera: 'phone' }, AT, null);
		expect(judged.answer).toBe('refused');
		expect(judged.sentence).toContain('orange');
		const [pointed, nothing] = [[AT], []].map((neutrals) =>
			readingInHand({ pixels, camera: 'phone' }, mask, 'shirt', neutrals),
		);
		expect(pointed!.swatches).toEqual(nothing!.swatches);
		expect(pointed!.trust.error).toBe(nothing!.trust.error);
	});

	it('is refused once the piece is known to come out lighter than white by it', () => {
		const { pixels, mask } = shelf([150, 148, 142], [240, 236, 228]);
		const read = readingInHand({ pixels, camera: 'phone' }, mask, 'shirt', [AT])!;
		expect(read.neutrals).toMatchObject([
			{ answer: 'refused', sentence: expect.stringContaining('lighter than white') },
		]);
	});

	it('is held against the piece where one is marked already, and against the whole picture before', () => {
		const { pixels, mask } = shelf([150, 148, 142], [240, 120, 40]);
		const inHand = { pixels, camera: 'phone' } as const;
		for (const piece of [null, { mask, kind: 'shirt' as const }]) {
			expect(whiteInHand(inHand, AT, piece).answer).toBe(piece ? 'refused' : 'asked');
		}
		const ownWhite = { x: 300, y: 150, lightness: 95 };
		const pale = shelf([60, 60, 60], [228, 226, 214]);
		const itself = whiteInHand({ pixels: pale.pixels, camera: 'phone' }, ownWhite, { mask: pale.mask, kind: 'shirt' });
		expect(itself).toMatchObject({ answer: 'asked', sentence: expect.stringContaining('piece itself') });
	});
});
