import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../src/photo/read-photo.ts';
import type { Reading } from '../../src/wardrobe/words/reading.ts';
import { collage, overlapping } from '../support/collage.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));

async function readingOf(source: string | Uint8Array): Promise<Reading> {
	const result = await readPhoto(source);
	if (!result.ok) throw new Error(result.message);
	return result.reading;
}

describe('a photo of garments side by side', () => {
	it('tells each with its own colours, and proposes to split the photo between them', async () => {
		const { pieces = [], proposal } = await readingOf(await collage('g01-cream-linen-shirt', 'g15-ink-trousers'));
		expect(pieces.map(({ slot }) => slot).sort()).toEqual(['bottom', 'top']);
		expect(proposal?.pieces).toBe(2);
		const [first, second] = proposal!.boxes;
		expect(first.right).toBeLessThan(0.6);
		expect(second.left).toBeGreaterThan(0.4);
		const lightness = (slot: string) => pieces.find((piece) => piece.slot === slot)!.swatches[0]!.lab[0];
		expect(lightness('top')).toBeGreaterThan(lightness('bottom') + 30);
	});

	it('tells a skirt that lies over the hem of a jumper from it, each with its own pattern', async () => {
		const { pieces = [], proposal } = await readingOf(await overlapping('plain-06-jumper', 'checked-03-skirt'));
		expect(pieces.map(({ slot, pattern }) => [slot, pattern.type]).sort()).toEqual([
			['bottom', 'checked'],
			['top', 'plain'],
		]);
		expect(proposal?.pieces).toBe(2);
		const [skirt, jumper] = [...proposal!.boxes].sort((one, other) => other.top - one.top);
		expect(skirt!.bottom).toBeGreaterThan(jumper!.bottom);
	});

	it('is not seen in photos of one garment, a pair of boots among them', async () => {
		for (const name of ['g05-blue-grey-shirt', 'g27-brown-ankle-boots', 'g29-oat-canvas-shoes']) {
			const { pieces, proposal } = await readingOf(demo(name));
			expect([name, pieces, proposal]).toEqual([name, undefined, undefined]);
		}
	});
});
