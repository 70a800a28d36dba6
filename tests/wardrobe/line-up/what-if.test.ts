import { describe, expect, it } from 'vitest';
import { whatIf } from '../../../src/wardrobe/line-up/what-if.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const garments = [
	aGarment({ id: 'lime shirt', kind: 'shirt', lab: [85, -40, 75] }),
	aGarment({ id: 'rust shirt', kind: 'shirt', lab: RUST }),
	aGarment({ id: 'rust skirt', kind: 'skirt', lab: RUST }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'oat boots', kind: 'boots', lab: OAT }),
];
const input = aSeasonInput({ garments });
const garmentIds = ['lime shirt', 'rust skirt', 'ink trousers', 'oat boots'];

describe('what if', () => {
	it('one garment is swapped: outfits, cover of the palette and gaps change at once', () => {
		const { before, after, outfitsChange, coveredChange, sentence } = whatIf(input, {
			garmentIds,
			remove: ['lime shirt'],
			add: ['rust shirt'],
		});
		// The lime shirt goes with the ink trousers only, the rust one with both bottoms.
		expect([before.outfits, after.outfits, outfitsChange].map(({ likely }) => likely)).toEqual([1, 2, 1]);
		expect(coveredChange).toBeCloseTo(after.coveredShare - before.coveredShare, 12);
		expect(after.garmentIds).toEqual(['ink trousers', 'oat boots', 'rust shirt', 'rust skirt']);
		expect(sentence).toContain('2 outfits, more than before');
	});

	it('gaps are filled and opened', () => {
		const { opened, filled } = whatIf(input, { garmentIds, remove: ['rust skirt'], add: [] });
		expect(opened.map(({ id }) => id)).toEqual(['colour rust']);
		const back = whatIf(input, {
			garmentIds: garmentIds.filter((id) => id !== 'rust skirt'),
			remove: [],
			add: ['rust skirt'],
		});
		expect(back.filled.map(({ id }) => id)).toEqual(['colour rust']);
		expect(filled).toEqual([]);
	});

	it('nothing changes, or nothing is left', () => {
		expect(whatIf(input, { garmentIds, remove: [], add: [] })).toMatchObject({
			outfitsChange: { likely: 0, from: 0, to: 0 },
			coveredChange: 0,
		});
		const { after } = whatIf(input, { garmentIds, remove: garmentIds, add: ['unknown'] });
		expect(after).toMatchObject({ garmentIds: [], outfits: { likely: 0, from: 0, to: 0 }, coveredShare: 0 });
	});
});
