import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { wishedPiece } from '../../../src/wardrobe/gaps/missing-piece.ts';
import { seasonGaps } from '../../../src/wardrobe/gaps/season-gaps.ts';
import { outfitTallies } from '../../../src/wardrobe/pairs/outfit-tallies.ts';
import { heldGarments, type SeasonInput } from '../../../src/wardrobe/words/season-input.ts';
import { aSeasonInput, aWish } from '../../support/build-season.ts';
import { aGarment, aPalette, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

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

	it('is held against a piece of its own look that goes with everything, whatever looks the others have', () => {
		const garments = [
			aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
			aGarment({ id: 'rust skirt', kind: 'skirt', lab: RUST }),
			aGarment({ id: 'lime skirt', kind: 'skirt', lab: [85, -40, 75] }),
		];
		const tops = missingIn(aSeasonInput({ garments })).filter(({ slot }) => slot === 'top');
		const shares = Object.fromEntries(tops.map(({ paletteColourId, shareOfBest }) => [paletteColourId, shareOfBest]));
		// Oat and ink are base and go with both skirts, rust and teal with the rust one alone; a second oat shirt counts half.
		expect(shares).toEqual({ oat: 1, ink: 1, rust: 0.5, teal: 0.5 });
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

describe('a wished piece that is not there yet', () => {
	it('is imagined in its target colour, else in the palette’s heaviest, else without colours', () => {
		const colourOf = (target: Lab65 | null, palette = aPalette()) =>
			wishedPiece(aWish({ target }), palette).swatches.map(({ lab }) => lab);
		const [oat, ...lighter] = aPalette().colours;
		expect(colourOf(TEAL)).toEqual([TEAL]);
		expect(colourOf(null)).toEqual([OAT]);
		expect(colourOf(null, { colours: [...lighter, oat!] })).toEqual([OAT]);
		expect(colourOf(null, { colours: [] })).toEqual([]);
	});

	it('is counted beside the pieces that are tried, with the outfits that are its own', () => {
		const garments = [
			aGarment({ id: 'rust shirt', kind: 'shirt', lab: RUST }),
			aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
		];
		const input = aSeasonInput({ garments });
		const others = [aGarment({ id: 'skirt', kind: 'skirt', lab: INK }), aGarment({ id: 'hat', kind: 'hat', lab: INK })];
		const { added } = seasonGaps(input, garments, [], { others });
		expect(added).toEqual(outfitTallies(input, garments, others).added);
		expect(added.map(([asRead]) => asRead)).toEqual([1, 0]);
	});
});
