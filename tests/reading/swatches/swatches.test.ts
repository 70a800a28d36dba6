import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { labFromPixels } from '../../../src/colour/lab-pixels.ts';
import {
	hexFromLab,
	type Lab65,
	labFromLinear,
	linearFromLab,
	linearFromSrgb,
	type SrgbLinear,
} from '../../../src/colour/lab65.ts';
import type { ClothPixels } from '../../../src/reading/swatches/cloth-pixels.ts';
import { canBeShade } from '../../../src/reading/swatches/one-cloth.ts';
import { swatchesOf } from '../../../src/reading/swatches/swatches.ts';

/** Cloth of the given colours and shares under a light that falls from full to `darkest` across the folds. */
function folded(colours: readonly { readonly lab: Lab65; readonly share: number }[], darkest: number): ClothPixels {
	const rgb: number[] = [];
	for (const { lab, share } of colours) {
		const linear = linearFromLab(lab);
		for (let i = 0; i < share * 2000; i++) {
			const light = darkest + (1 - darkest) * (0.5 + 0.5 * Math.sin(i / 7));
			const shaded = labFromLinear(linear.map((channel) => Math.max(0, channel * light)) as unknown as SrgbLinear);
			const hex = hexFromLab(shaded);
			rgb.push(...[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)));
		}
	}
	return {
		slot: 'top',
		labs: labFromPixels(Uint8Array.from(rgb), 3),
		area: rgb.length / 3,
	};
}

const oat: Lab65 = [80, 3, 14];
const ink: Lab65 = [28, 2, -14];
const rust: Lab65 = [48, 38, 38];

describe('swatches', () => {
	it.each([
		['oat', oat],
		['ink', ink],
		['rust', rust],
		['black', [12, 0, 0]],
		['white', [95, 0, 2]],
	] as [string, Lab65][])('keep a cloth with folds one swatch: %s', (_, lab) => {
		const [only, ...others] = swatchesOf([folded([{ lab, share: 1 }], 0.55)]);
		expect(others).toEqual([]);
		expect(deltaE2000(only!.lab, lab)).toBeLessThan(6);
	});

	it('keep the colours of a print apart, with their true shares', () => {
		const found = swatchesOf([
			folded(
				[
					{ lab: oat, share: 0.6 },
					{ lab: rust, share: 0.25 },
					{ lab: ink, share: 0.15 },
				],
				0.8,
			),
		]);
		expect(found.map(({ share }) => Math.round(share * 20) / 20)).toEqual([0.6, 0.25, 0.15]);
	});

	it('keep black and white stripes two colours', () => {
		const found = swatchesOf([
			folded(
				[
					{ lab: [94, 0, 1], share: 0.5 },
					{ lab: [18, 0, 0], share: 0.5 },
				],
				0.85,
			),
		]);
		expect(found).toHaveLength(2);
	});

	it('keep deep folds one cloth, but stripes of the same two greys apart', () => {
		const pale: Lab65 = [74, 0, 4];
		const [only, ...others] = swatchesOf([folded([{ lab: pale, share: 1 }], 0.3)]);
		expect(others).toEqual([]);
		expect(deltaE2000(only!.lab, pale)).toBeLessThan(10);
		const striped = folded(
			[
				{ lab: pale, share: 0.5 },
				{ lab: [52, 0, 3], share: 0.5 },
			],
			0.95,
		);
		expect(swatchesOf([striped]).map(({ share }) => Math.round(share * 20) / 20)).toEqual([0.5, 0.5]);
	});

	it('are none for no pixels', () => {
		expect(swatchesOf([])).toEqual([]);
	});
});

describe('a fold', () => {
	it('is darker by one factor in linear light, in every channel', () => {
		const light = linearFromSrgb([0.8, 0.5, 0.3]);
		const dark = light.map((channel) => channel * 0.5) as unknown as SrgbLinear;
		expect(canBeShade(labFromLinear(light), labFromLinear(dark))).toBe(true);
		const other = [light[2], light[1] * 0.5, light[0] * 0.5] as unknown as SrgbLinear;
		expect(canBeShade(labFromLinear(light), labFromLinear(other))).toBe(false);
	});
});
