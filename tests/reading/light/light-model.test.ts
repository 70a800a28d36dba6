import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { chroma, type Lab65, labFromLinear, labFromXyz, xyzFromLab } from '../../../src/colour/lab65.ts';
import { correctedBy, UNTOLD_PHONE } from '../../../src/reading/light/light-model.ts';
import { modelFromNeutrals } from '../../../src/reading/light/neutral-model.ts';
import type { CameraKind, SeenNeutral } from '../../../src/wardrobe/words/light.ts';

const channel = fc.double({ min: 0, max: 1, noNaN: true });
const colour = fc.tuple(channel, channel, channel).map((rgb) => labFromLinear(rgb));
/** How a neutral may look under a lamp: light enough to be one, and of a cast that lamps give. */
const seen = fc
	.tuple(fc.double({ min: 0.25, max: 1, noNaN: true }), fc.double({ min: 0.6, max: 1, noNaN: true }))
	.map(([red, ratio]) => labFromLinear([red, red * (0.5 + ratio / 2), red * ratio]));
const camera = fc.constantFrom<CameraKind>('phone', 'camera');
const surround = fc.option(fc.double({ min: 0, max: 0.6, noNaN: true }));
const white = seen.map((lab): SeenNeutral => ({ kind: 'white', seen: lab, lightness: 95 }));
const grey = fc
	.tuple(seen, fc.integer({ min: 40, max: 70 }))
	.map(([lab, lightness]): SeenNeutral => ({ kind: 'grey', seen: lab, lightness }));
const model = fc.oneof(
	fc
		.tuple(white, camera, surround)
		.map(([one, by, around]) => modelFromNeutrals({ white: one, grey: null }, by, around)),
	fc
		.tuple(grey, camera, surround)
		.map(([one, by, around]) => modelFromNeutrals({ white: null, grey: one }, by, around)),
);

describe('taking the light out of a colour', () => {
	it('makes the neutral it was told by grey, and as light as it is in truth', () => {
		fc.assert(
			fc.property(fc.oneof(white, grey), camera, surround, (neutral, by, around) => {
				const isWhite = neutral.kind === 'white';
				const told = modelFromNeutrals({ white: isWhite ? neutral : null, grey: isWhite ? null : neutral }, by, around);
				expect(deltaE2000(correctedBy(told)(neutral.seen), [neutral.lightness, 0, 0])).toBeLessThan(0.01);
			}),
		);
	});

	it('brings two neutrals to their places both at once, where the picture lies between them as a phone presses it', () => {
		// Paper at 0.8 and a card at 0.42 of full light: 8 real phone photos have 0.3 to 0.45 there.
		const paper: SeenNeutral = { kind: 'white', seen: labFromLinear([0.8, 0.8, 0.8]), lightness: 95 };
		const card: SeenNeutral = { kind: 'grey', seen: labFromLinear([0.42, 0.42, 0.42]), lightness: 50 };
		for (const by of ['phone', 'camera'] as const) {
			const correct = correctedBy(modelFromNeutrals({ white: paper, grey: card }, by, 0.1));
			expect(correct(paper.seen)[0]).toBeCloseTo(95, 3);
			expect(correct(card.seen)[0]).toBeCloseTo(50, 3);
		}
	});

	it('gives a real colour for every colour: finite, lightness within 0 and 100', () => {
		fc.assert(
			fc.property(model, colour, (told, lab) => {
				const [L, a, b] = correctedBy(told)(lab);
				expect([L, a, b].every(Number.isFinite)).toBe(true);
				expect(L).toBeGreaterThanOrEqual(0);
				expect(L).toBeLessThanOrEqual(100);
			}),
		);
	});

	it('keeps the order of light and dark: of two greys of the lamp, the lighter stays the lighter', () => {
		fc.assert(
			fc.property(model, channel, channel, (told, one, other) => {
				const [X, , Z] = told.white;
				const greyOf = (Y: number): Lab65 => labFromXyz([X * Y, Y, Z * Y]);
				const [a, b] = [correctedBy(told)(greyOf(one)), correctedBy(told)(greyOf(other))];
				if (one < other) expect(a[0]).toBeLessThanOrEqual(b[0] + 1e-9);
			}),
		);
	});

	it('of a neutral photo keeps every hue: only lightness and chroma move', () => {
		const neutral: SeenNeutral = { kind: 'white', seen: labFromLinear([0.8, 0.8, 0.8]), lightness: 95 };
		const correct = correctedBy(modelFromNeutrals({ white: neutral, grey: null }, 'phone', null));
		fc.assert(
			fc.property(colour, (lab) => {
				const out = correct(lab);
				fc.pre(chroma(lab) > 5 && out[0] > 2 && out[0] < 99);
				// The ratios of the channels are kept: XYZ grows by one factor, and a*, b* go with its cube root.
				const [before, after] = [xyzFromLab(lab), xyzFromLab([out[0], out[1] / 0.815, out[2] / 0.815])];
				expect(after[0] / after[1]).toBeCloseTo(before[0] / before[1], 6);
				expect(after[2] / after[1]).toBeCloseTo(before[2] / before[1], 6);
			}),
		);
	});

	it('changes nothing where there is no model', () => {
		fc.assert(
			fc.property(colour, (lab) => {
				expect(correctedBy(null)(lab)).toEqual(lab);
			}),
		);
	});

	it('of a phone photo that nothing tells leaves white and the middle, lifts the darks, and turns no hue', () => {
		const correct = correctedBy(UNTOLD_PHONE);
		for (const L of [0, 55, 100]) expect(correct([L, 0, 0])[0]).toBeCloseTo(L, 1);
		expect(correct([10, 0, 0])[0]).toBeGreaterThan(15);
		expect(correct([10, 0, 0])[0]).toBeLessThan(20);
		fc.assert(
			fc.property(colour, (lab) => {
				fc.pre(lab[0] > 0.1);
				const [, a, b] = correct(lab);
				expect(a).toBeCloseTo(0.83 * lab[1], 6);
				expect(b).toBeCloseTo(0.83 * lab[2], 6);
			}),
		);
	});
});
