import { describe, expect, it } from 'vitest';
import { swapsFor } from '../../../src/wardrobe/line-up/swaps.ts';
import { whatIf } from '../../../src/wardrobe/line-up/what-if.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const garments = [
	aGarment({ id: 'lime shirt', kind: 'shirt', lab: [85, -40, 75] }),
	aGarment({ id: 'rust shirt', kind: 'shirt', lab: RUST }),
	aGarment({ id: 'ink shirt', kind: 'shirt', lab: INK }),
	aGarment({ id: 'stored shirt', kind: 'shirt', lab: INK, place: 'stored' }),
	aGarment({ id: 'rust skirt', kind: 'skirt', lab: RUST }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'oat boots', kind: 'boots', lab: OAT }),
	aGarment({ id: 'lime boots', kind: 'boots', lab: [85, -40, 75] }),
];
const input = aSeasonInput({ garments });
const garmentIds = ['lime shirt', 'rust skirt', 'ink trousers', 'oat boots'];

describe('all swaps of one garment', () => {
	it('tell of each garment what trying it out by itself tells, the last shoes included', () => {
		for (const garmentId of garmentIds) {
			for (const swap of swapsFor(input, { garmentIds, garmentId })) {
				const alone = whatIf(input, { garmentIds, remove: [garmentId], add: [swap.garmentId] });
				expect(swap.outfits).toEqual(alone.after.outfits);
				expect(swap.coveredShare).toBeCloseTo(alone.after.coveredShare, 12);
				expect([swap.outfitsChange, swap.sentence]).toEqual([alone.outfitsChange, alone.sentence]);
			}
		}
	});

	it('offer what is on the rail in the same slot, most outfits first', () => {
		const swaps = swapsFor(input, { garmentIds, garmentId: 'lime shirt' });
		expect(swaps.map(({ garmentId }) => garmentId).sort()).toEqual(['ink shirt', 'rust shirt']);
		expect(swaps[0]!.outfits.likely).toBeGreaterThanOrEqual(swaps[1]!.outfits.likely);
		expect(swapsFor(input, { garmentIds, garmentId: 'oat boots' }).map(({ garmentId }) => garmentId)).toEqual([
			'lime boots',
		]);
	});

	it('are none for a garment that is not in the set', () => {
		expect(swapsFor(input, { garmentIds, garmentId: 'rust shirt' })).toEqual([]);
		expect(swapsFor(input, { garmentIds, garmentId: 'unknown' })).toEqual([]);
	});
});
