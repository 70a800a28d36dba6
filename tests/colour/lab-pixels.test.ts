import { describe, expect, it } from 'vitest';
import { labFromPixels } from '../../src/colour/lab-pixels.ts';
import { labFromSrgb8 } from '../../src/colour/lab65.ts';

describe('whole pictures to CIELAB', () => {
	it('equal culori pixel by pixel within 0.00002, on a grid of 8-bit colours', () => {
		const steps = [0, 1, 5, 11, 40, 77, 128, 200, 254, 255];
		const colours = steps.flatMap((r) => steps.flatMap((g) => steps.map((b) => [r, g, b] as const)));
		const labs = labFromPixels(Uint8Array.from(colours.flat()), 3);
		for (const [index, [r, g, b]] of colours.entries())
			for (const [axis, value] of labFromSrgb8(r, g, b).entries())
				expect(Math.abs(labs[index * 3 + axis]! - value)).toBeLessThan(2e-5);
	});

	it('pass over an alpha channel, and over a last pixel that is not whole', () => {
		expect([...labFromPixels(Uint8Array.from([9, 80, 200, 0, 255, 255]), 4)]).toEqual([
			...labFromPixels(Uint8Array.from([9, 80, 200]), 3),
		]);
		expect(labFromPixels(new Uint8Array(0), 3)).toHaveLength(0);
	});
});
