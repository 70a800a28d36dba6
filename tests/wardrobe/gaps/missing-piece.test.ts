import { describe, expect, it } from 'vitest';
import { seasonGaps } from '../../../src/wardrobe/gaps/season-gaps.ts';
import { heldGarments, type SeasonInput } from '../../../src/wardrobe/words/season-input.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const missingIn = (input: SeasonInput) => seasonGaps(input, heldGarments(input), []).missingPieces;

describe('the missing piece', () => {
	it('is told best first within each slot', () => {
		const garments = [
			aGarment({ id: 'lime top', kind: 'shirt', lab: [85, -40, 75] }),
			aGarment({ id: 'rust top', kind: 'shirt', lab: RUST }),
			aGarment({ id: 'boots', kind: 'boots', lab: INK }),
		];
		const bottoms = missingIn(aSeasonInput({ garments })).filter(({ slot }) => slot === 'bottom');
		// A base neutral goes with both tops, rust and teal only with the one in the palette.
		expect(bottoms.map(({ outfitsAdded }) => outfitsAdded.likely)).toEqual([2, 2, 1, 1]);
		expect(bottoms.map(({ shareOfBest }) => shareOfBest)).toEqual([1, 1, 0.5, 0.5]);
	});

	it('of a wardrobe without partners adds nothing, and without a palette there is none', () => {
		const hat = aSeasonInput({ garments: [aGarment({ id: 'hat', kind: 'hat', lab: OAT })] });
		for (const { outfitsAdded, shareOfBest } of missingIn(hat)) {
			// Only a dress makes an outfit by itself, worn without known shoes.
			expect([0, 1]).toContain(outfitsAdded.likely);
			expect(Number.isFinite(shareOfBest)).toBe(true);
		}
		expect(missingIn(aSeasonInput({ palette: { colours: [] } }))).toEqual([]);
	});
});
