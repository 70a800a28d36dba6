import { describe, expect, it } from 'vitest';
import { generatedBoard, generatedWardrobe } from '../../../bench/generated-wardrobe.ts';
import { missingPieces, outfitGains } from '../../../src/wardrobe/gaps/missing-piece.ts';
import { countOutfits } from '../../../src/wardrobe/pairs/outfits.ts';
import { pairContextOf } from '../../../src/wardrobe/pairs/pair-context.ts';
import { pairTable } from '../../../src/wardrobe/pairs/pair-table.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import type { SeasonInput } from '../../../src/wardrobe/words/season-input.ts';
import type { Slot } from '../../../src/wardrobe/words/slot.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

/** Outfits of all these garments, counted anew. */
function recounted(input: SeasonInput, garments: readonly Garment[]): number {
	const table = pairTable(garments, pairContextOf(input));
	return countOutfits({ slots: table.slots, goes: table.supported }, garments.keys());
}

const KIND_OF: Partial<Record<Slot, Kind>> = {
	top: 'shirt',
	outer: 'jacket',
	bottom: 'trousers',
	full: 'dress',
	shoes: 'shoes',
};
const inspirations = generatedBoard(6, 'board').map((reading, index) => ({
	inspiration: { id: `i${index}`, seasonId: 'spring', photoId: `p${index}`, title: '', group: '', addedAt: '' },
	reading,
}));

describe('the missing piece', () => {
	it('adds exactly what counting all outfits again finds', () => {
		const garments = generatedWardrobe(60, 'missing');
		const input = aSeasonInput({ garments, inspirations });
		const before = recounted(input, garments);
		expect(before).toBeGreaterThan(0);
		const pieces = missingPieces(input);
		expect(pieces).toHaveLength(5 * 4);
		expect(new Set(pieces.map(({ outfitsAdded }) => outfitsAdded)).size).toBeGreaterThan(5);
		for (const { slot, paletteColourId, outfitsAdded, shareOfBest } of pieces) {
			const { lab } = input.palette.colours.find(({ id }) => id === paletteColourId)!;
			const piece = aGarment({ id: 'new', kind: KIND_OF[slot]!, lab });
			expect(outfitsAdded).toBe(recounted(input, [...garments, piece]) - before);
			const words = garments.map(({ id }) => ({ garmentA: id, garmentB: 'new', word: 'approved' as const }));
			const most = recounted({ ...input, pairWords: words }, [...garments, piece]) - before;
			expect(shareOfBest).toBeCloseTo(outfitsAdded / most, 9);
		}
	});

	it('is told best first within each slot', () => {
		const garments = [
			aGarment({ id: 'lime top', kind: 'shirt', lab: [85, -40, 75] }),
			aGarment({ id: 'rust top', kind: 'shirt', lab: RUST }),
			aGarment({ id: 'boots', kind: 'boots', lab: INK }),
		];
		const bottoms = missingPieces(aSeasonInput({ garments })).filter(({ slot }) => slot === 'bottom');
		// A base neutral goes with both tops, rust and teal only with the one in the palette.
		expect(bottoms.map(({ outfitsAdded }) => outfitsAdded)).toEqual([2, 2, 1, 1]);
		expect(bottoms.map(({ shareOfBest }) => shareOfBest)).toEqual([1, 1, 0.5, 0.5]);
	});

	it('of a wardrobe without partners adds nothing, and without a palette there is none', () => {
		for (const { outfitsAdded, shareOfBest } of missingPieces(
			aSeasonInput({ garments: [aGarment({ id: 'hat', kind: 'hat', lab: OAT })] }),
		)) {
			// Only a dress makes an outfit by itself, worn without known shoes.
			expect([0, 1]).toContain(outfitsAdded);
			expect(Number.isFinite(shareOfBest)).toBe(true);
		}
		expect(missingPieces(aSeasonInput({ palette: { colours: [] } }))).toEqual([]);
		expect(outfitGains(aSeasonInput(), [aGarment({ id: 'x', lab: TEAL })])).toEqual([{ added: 0, most: 0 }]);
	});
});
