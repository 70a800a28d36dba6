import { describe, expect, it } from 'vitest';
import { generatedBoard, generatedWardrobe } from '../../../bench/generated-wardrobe.ts';
import { outfitsText, rangeOf } from '../../../src/wardrobe/pairs/outfit-range.ts';
import { outfitTallies } from '../../../src/wardrobe/pairs/outfit-tallies.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const inspirations = generatedBoard(6, 'board').map((reading, index) => ({
	inspiration: { id: `i${index}`, seasonId: 'spring', photoId: `p${index}`, title: '', group: '', addedAt: '' },
	reading,
}));
const sure = { error: 0, reasons: [], advice: null };
const doubtful = { error: 12, reasons: ['the lamp is unknown'], advice: null };
const trousers = aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK, trust: sure });
const heldOf = (garments: readonly Garment[]) => outfitTallies(aSeasonInput({ garments }), garments, []).held;

describe('what a piece adds', () => {
	it('is what counting all outfits again finds, as read and in every re-read', () => {
		const garments = generatedWardrobe(30, 'tallies');
		const input = aSeasonInput({ garments, inspirations });
		const pieces = [
			aGarment({ id: 'new shirt', kind: 'shirt', lab: OAT }),
			aGarment({ id: 'new coat', kind: 'jacket', lab: INK }),
			aGarment({ id: 'new boots', kind: 'boots', lab: RUST }),
		];
		const { held, added, most } = outfitTallies(input, garments, pieces);
		expect(held.length).toBeGreaterThan(10);
		for (const [index, piece] of pieces.entries()) {
			const again = outfitTallies(input, [...garments, piece], []).held;
			for (const [round, count] of again.entries()) expect(added[index]![round]!).toBeCloseTo(count - held[round]!, 6);
			expect(most[index]!).toBeGreaterThanOrEqual(added[index]![0]);
		}
	});

	it('is half for a piece that looks like one owned, and half again for the next', () => {
		const shirt = (id: string) => aGarment({ id, kind: 'shirt', lab: OAT, trust: sure });
		const counts = [1, 2, 3].map((many) => heldOf([trousers, ...['a', 'b', 'c'].slice(0, many).map(shirt)])[0]);
		expect(counts).toEqual([1, 1.5, 1.75]);
		const { added } = outfitTallies(aSeasonInput(), [trousers, shirt('a')], [shirt('new')]);
		expect(added[0]![0]).toBe(0.5);
	});

	it('is nothing for a piece of another part of the year', () => {
		const winter = { startsOn: '2025-12-01', endsOn: '2026-02-28', yearPart: 'winter' as const };
		const input = aSeasonInput();
		const season = { ...input.season, ...winter };
		const shorts = aGarment({ id: 'shorts', kind: 'shorts', lab: INK });
		const shirt = aGarment({ id: 'shirt', kind: 'shirt', lab: OAT });
		expect(outfitTallies({ ...input, season }, [shirt], [shorts]).added[0]![0]).toBe(0);
		expect(heldOf([shirt, shorts])[0]).toBe(outfitTallies(input, [shirt], [shorts]).added[0]![0]);
	});
});

describe('the range of a count', () => {
	it('is one number where the photos are sure, and wide where they are not', () => {
		const shirts = (trust: Garment['trust']) => [
			trousers,
			aGarment({ id: 'a', kind: 'shirt', lab: [60, 30, 30], trust }),
			aGarment({ id: 'b', kind: 'jumper', lab: [45, 34, 36], trust }),
			aGarment({ id: 'c', kind: 'skirt', lab: [40, -40, 40], trust }),
		];
		const of = (trust: Garment['trust']) => rangeOf(heldOf(shirts(trust)));
		expect(of(sure).from).toBe(of(sure).to);
		expect(of(doubtful).to).toBeGreaterThan(of(doubtful).from);
	});

	it('of what was worn or approved does not change with the photos', () => {
		const skirt = aGarment({ id: 'skirt', kind: 'skirt', lab: [85, -40, 75], trust: doubtful });
		const shirt = aGarment({ id: 'shirt', kind: 'shirt', lab: [50, 50, -50], trust: doubtful });
		const both = [skirt, shirt];
		const wears = both.map(({ id: garmentId }) => ({ garmentId, on: '2026-03-01' }));
		const pairWords = [{ garmentA: 'skirt', garmentB: 'shirt', word: 'approved' as const }];
		for (const [input, count] of [
			[aSeasonInput({ garments: both, wears }), 1],
			[aSeasonInput({ garments: both, pairWords }), 1],
			[aSeasonInput({ garments: both }), 0],
		] as const)
			expect(new Set(outfitTallies(input, both, []).held)).toEqual(new Set([count]));
	});

	it('is said in steps that a person can tell apart', () => {
		const cases: readonly (readonly [number[], string])[] = [
			[[0], '0 outfits'],
			[[1], '1 outfit'],
			[[7, 7, 7], '7 outfits'],
			[[444], '400 to 500 outfits'],
			[[40, 40, 40], 'about 40 outfits'],
			[[33, 21, 48], '20 to 50 outfits'],
			[[5000, 3000, 9000], 'over 1000 outfits'],
		];
		for (const [tally, text] of cases) expect(outfitsText(rangeOf(tally as [number]))).toBe(text);
		// A difference may be negative: rounded outwards on both sides.
		expect(rangeOf([-3, -33, 14])).toMatchObject({ likely: -3, from: -40, to: 15 });
	});
});
