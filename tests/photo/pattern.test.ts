import { beforeAll, describe, expect, it } from 'vitest';
import { patternOf } from '../../src/photo/pattern.ts';
import type { Pixels } from '../../src/photo/pixels.ts';
import { type ClothPhoto, clothPhotos, meanOf } from '../support/known-photos.ts';

/**
 * Rendered cloth of known pattern: fixtures/renders. The model was fitted on these too, so this holds it in place; how it does on photos it has
 * not seen is told by garment-patterns.test.ts and fixtures/garment-patterns/README.md.
 */
let seen: { readonly photo: ClothPhoto; readonly pattern: ReturnType<typeof patternOf> }[];
beforeAll(async () => {
	seen = (await clothPhotos()).map((photo) => ({
		photo,
		pattern: patternOf(photo.pixels, photo.inside, 1, photo.swatches, 1),
	}));
}, 180_000);

const turnBetween = (one: number, other: number, turn: number): number => {
	const apart = (((one - other) % turn) + turn) % turn;
	return Math.min(apart, turn - apart);
};

describe('the pattern of cloth', () => {
	it('is told right on nine of ten rendered pieces', () => {
		const right = seen.filter(({ photo, pattern }) => photo.pattern === pattern.type);
		expect(right.length / seen.length).toBeGreaterThanOrEqual(0.9);
	});

	it('is told with a probability that is neither boast nor modesty', () => {
		const right = meanOf(seen.map(({ photo, pattern }) => (photo.pattern === pattern.type ? 1 : 0)));
		expect(Math.abs(meanOf(seen.map(({ pattern }) => pattern.sure)) - right)).toBeLessThan(0.15);
	});

	it('tells the direction of stripes within 10 degrees and their repeat within 15 % in four of five', () => {
		const stripes = seen.filter(({ photo, pattern }) => photo.pattern === 'striped' && pattern.type === 'striped');
		const turned = stripes.filter(
			({ photo, pattern }) => turnBetween(pattern.directionDegrees ?? 45, photo.directionDegrees!, 180) <= 10,
		);
		const repeated = stripes.filter(
			({ photo, pattern }) => Math.abs((pattern.periodPx ?? 0) / photo.stripePeriodPx! - 1) <= 0.15,
		);
		expect(turned.length).toBeGreaterThanOrEqual(0.8 * stripes.length);
		expect(repeated.length).toBeGreaterThanOrEqual(0.8 * stripes.length);
	});

	it('is said to be uncertain where the piece is too small to judge', () => {
		const pixels: Pixels = { widthPx: 20, heightPx: 20, rgb: new Uint8Array(1200).fill(90), alpha: null };
		const marks = new Uint8Array(400).fill(1);
		const pattern = patternOf(pixels, marks, 1, [{ lab: [40, 0, 0], share: 1, slot: 'top' }], 1);
		expect(pattern.type).toBe('plain');
		expect(pattern.sure).toBeLessThan(0.7);
	});
});
