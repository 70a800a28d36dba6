import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { fitOf } from '../../../src/wardrobe/fit/fit.ts';
import { surerLight } from '../../../src/wardrobe/fit/surer-light.ts';
import { aGarment, aPalette, OAT } from '../../support/build-wardrobe.ts';

const trust = (error: number) => ({ error, reasons: [], advice: null });
const piece = (id: string, lab: Lab65, error: number) => aGarment({ id, lab, trust: trust(error) });
const palette = aPalette();

describe('what paper and a grey card would buy', () => {
	it('is how many unsure pieces are clear at the smaller error, in a sentence that says so', () => {
		const unsure = [0, 4, 8, 12, 16, 20, 24].map((far) => piece(`${far}`, [OAT[0], OAT[1] + far, OAT[2]], 10));
		const { unsure: count, clearWith, sentence } = surerLight(unsure, palette);
		const now = unsure.filter((one) => fitOf(one, palette).verdict === 'unsure');
		expect(count).toBe(now.length);
		const clearAtFive = now.filter((one) => fitOf({ ...one, trust: trust(5) }, palette).verdict !== 'unsure').length;
		expect(clearAtFive).toBeGreaterThan(0);
		expect(clearWith.find(({ aid }) => aid === 'both')!.pieces).toBe(clearAtFive);
		expect(sentence).toContain(`about ${clearAtFive} would be clear`);
		expect(sentence).toContain(`${count} pieces are unsure`);
	});

	it('does not tell of paper and card together where the card alone buys as much', () => {
		for (let far = 0; far <= 30; far += 0.5) {
			const { clearWith, sentence } = surerLight([piece('a', [OAT[0], OAT[1] + far, OAT[2]], 10)], palette);
			const [paper, card, both] = ['paper', 'card', 'both'].map(
				(aid) => clearWith.find((one) => one.aid === aid)!.pieces,
			);
			if (card === 0 || paper === 1) continue;
			expect(both).toBe(1);
			expect(sentence).toBe(
				'1 piece is unsure because of the light. Photographed with a grey card beside it, about 1 would be clear.',
			);
			return;
		}
		expect.unreachable('no distance at which the card buys what paper does not');
	});

	it('is nothing where nothing is unsure, no photo is read, or there is no palette', () => {
		expect(surerLight([piece('a', OAT, 1)], palette)).toMatchObject({ unsure: 0, sentence: null });
		expect(surerLight([aGarment({ id: 'b', swatches: [] })], palette)).toMatchObject({ unsure: 0, sentence: null });
		expect(surerLight([piece('a', OAT, 10)], { colours: [] }).sentence).toBeNull();
		expect(surerLight([], palette).sentence).toBeNull();
	});

	it('never counts more clear pieces than are unsure, and nothing for photos that are sure already', () => {
		const lab = fc.tuple(
			fc.integer({ min: 10, max: 90 }),
			fc.integer({ min: -60, max: 60 }),
			fc.integer({ min: -60, max: 60 }),
		);
		fc.assert(
			fc.property(fc.array(fc.tuple(lab, fc.integer({ min: 1, max: 15 })), { maxLength: 8 }), (drawn) => {
				const pieces = drawn.map(([colour, error], index) => piece(`${index}`, colour, error));
				const { unsure, clearWith } = surerLight(pieces, palette);
				for (const { pieces: clear } of clearWith) expect(clear).toBeLessThanOrEqual(unsure);
				const sure = pieces.map((one) => ({ ...one, trust: trust(Math.min(5, one.trust.error)) }));
				expect(surerLight(sure, palette).clearWith.every(({ pieces: clear }) => clear === 0)).toBe(true);
			}),
		);
	});
});
