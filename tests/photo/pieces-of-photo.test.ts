import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../src/photo/read-photo.ts';
import { slotOfKind } from '../../src/wardrobe/words/kind.ts';
import type { Reading } from '../../src/wardrobe/words/reading.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));

async function readingOf(name: string): Promise<Reading> {
	const result = await readPhoto(demo(name));
	if (!result.ok) throw new Error(result.message);
	return result.reading;
}

describe('pieces of a picture', () => {
	it('of somebody dressed are told one by one, with shares, kinds and colours that make sense', async () => {
		const { pieces = [] } = await readingOf('i02-oat-coat');
		expect(pieces.length).toBeGreaterThanOrEqual(2);
		expect(pieces.map(({ slot }) => slot)).toContain('outer');
		expect(pieces.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(1);
		for (const { share, kind, kinds, swatches } of pieces) {
			expect(share).toBeGreaterThanOrEqual(0.01);
			expect(swatches.reduce((sum, swatch) => sum + swatch.share, 0)).toBeCloseTo(1, 6);
			expect([...kinds].sort((a, b) => b.probability - a.probability)).toEqual(kinds);
			if (kind) expect(kind).toBe(kinds[0]!.kind);
			for (const likely of kinds) expect(slotOfKind(likely.kind)).toBeTruthy();
		}
	});

	it('are the same each time', async () => {
		expect((await readingOf('i06-rust-dress')).pieces).toEqual((await readingOf('i06-rust-dress')).pieces);
	});

	it('are not asked of a single garment or a scene', async () => {
		expect((await readingOf('g01-cream-linen-shirt')).pieces).toBeUndefined();
		expect((await readingOf('i12-river-morning')).pieces).toBeUndefined();
	});
});
