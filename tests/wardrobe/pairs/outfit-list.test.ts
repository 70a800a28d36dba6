import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outfitList } from '../../../src/wardrobe/pairs/outfit-list.ts';
import { eachOutfit, outfitTable } from '../../../src/wardrobe/pairs/outfits.ts';
import { pairContextOf } from '../../../src/wardrobe/pairs/pair-context.ts';
import { pairTable } from '../../../src/wardrobe/pairs/pair-table.ts';
import { SUPPORT_KINDS } from '../../../src/wardrobe/pairs/support.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const KINDS_WORN: readonly Kind[] = ['shirt', 'jumper', 'trousers', 'skirt', 'dress', 'boots', 'coat', 'scarf'];
const COLOURS = [INK, OAT, RUST, [85, -40, 75], [50, 0, 0]] as const;

/** Any wardrobe of up to 14 garments in five colours, one of which goes with little. */
const wardrobes = fc
	.array(fc.record({ kind: fc.constantFrom(...KINDS_WORN), lab: fc.constantFrom(...COLOURS) }), { maxLength: 14 })
	.map((garments) => garments.map((garment, index) => aGarment({ id: `g${index}`, ...garment })));
const tableOf = (garments: Parameters<typeof pairTable>[0]) =>
	pairTable(garments, pairContextOf(aSeasonInput({ garments })));

type Table = ReturnType<typeof tableOf>;
const { season } = aSeasonInput();
function everyOutfit(table: Table): (readonly number[])[] {
	const every: (readonly number[])[] = [];
	const outfits = outfitTable(table.garments, table.supported, season);
	eachOutfit(outfits, table.garments.keys(), (pieces) => every.push([...pieces]));
	return every;
}
const strength = (table: Table, pieces: readonly number[]) => {
	const pairs = pieces.flatMap((one, at) => pieces.slice(at + 1).map((other) => table.kind(one, other)));
	return (
		pairs.reduce((sum, kind) => sum + SUPPORT_KINDS.length - SUPPORT_KINDS.indexOf(kind), 0) / Math.max(1, pairs.length)
	);
};

describe('the list of outfits', () => {
	it('holds each outfit that is counted once, and no other', () => {
		fc.assert(
			fc.property(wardrobes, (garments) => {
				const table = tableOf(garments);
				const members = [...garments.keys()];
				const list = outfitList(table, members, { anchor: null, limit: Number.POSITIVE_INFINITY, season });
				expect(list).toHaveLength(everyOutfit(table).length);
				expect(new Set(list.map((pieces) => [...pieces].sort().join(' '))).size).toBe(list.length);
				for (const pieces of list)
					for (const one of pieces)
						for (const other of pieces) if (one !== other) expect(table.supported(one, other)).toBe(true);
			}),
			{ numRuns: 60, seed: 5 },
		);
	});

	it('begins with the best supported one, and each next is the best once what was shown costs', () => {
		fc.assert(
			fc.property(wardrobes, (garments) => {
				const table = tableOf(garments);
				const every = everyOutfit(table);
				const shown: number[] = [];
				const list = outfitList(table, [...garments.keys()], { anchor: null, limit: 6, season });
				for (const [place, outfit] of list.entries()) {
					const score = (pieces: readonly number[]) =>
						strength(table, pieces) -
						2 * pieces.reduce((sum, piece) => sum + shown.filter((one) => one === piece).length, 0);
					const left = every.filter(
						(pieces) => !list.slice(0, place).some((before) => before.join() === pieces.join()),
					);
					expect(score(outfit)).toBeCloseTo(Math.max(...left.map(score)), 9);
					shown.push(...outfit);
				}
			}),
			{ numRuns: 60, seed: 6 },
		);
	});

	it('around one piece holds all outfits that wear it', () => {
		fc.assert(
			fc.property(wardrobes, fc.nat(13), (garments, chosen) => {
				fc.pre(chosen < garments.length);
				const table = tableOf(garments);
				const members = [...garments.keys()];
				const all = outfitList(table, members, { anchor: null, limit: Number.POSITIVE_INFINITY, season });
				const around = outfitList(table, members, { anchor: chosen, limit: Number.POSITIVE_INFINITY, season });
				expect(around.map(String).sort()).toEqual(
					all
						.filter((pieces) => pieces.includes(chosen))
						.map(String)
						.sort(),
				);
			}),
			{ numRuns: 60, seed: 7 },
		);
	});
});

describe('the list of outfits of a small wardrobe', () => {
	const garments = [
		aGarment({ id: 'shirt', kind: 'shirt', lab: [80, 0, 0] }),
		aGarment({ id: 'jumper', kind: 'jumper', lab: [40, 1, 1] }),
		aGarment({ id: 'trousers', kind: 'trousers', lab: [30, 0, 0] }),
		aGarment({ id: 'skirt', kind: 'skirt', lab: [50, 0, 2] }),
		aGarment({ id: 'dress', kind: 'dress', lab: [60, 0, 0] }),
		aGarment({ id: 'boots', kind: 'boots', lab: [25, 0, 0] }),
		aGarment({ id: 'coat', kind: 'coat', lab: [70, 0, 0] }),
	];
	const pairWords = garments.flatMap(({ id: garmentA }, index) =>
		garments.slice(index + 1).map(({ id: garmentB }) => ({ garmentA, garmentB, word: 'approved' as const })),
	);
	const all = [...garments.keys()];
	const listOf = (words: typeof pairWords, members: readonly number[], anchor: number | null, limit: number) => {
		const context = { palette: { colours: [] }, pairings: [], pairWords: words, wornTogether: [] };
		return outfitList(pairTable(garments, context), members, { anchor, limit, season });
	};

	it('every outfit is top, bottom and shoes or full and shoes, with or without an outer piece', () => {
		// ((2 tops, or the jumper over the shirt) x 2 bottoms + 1 dress) x 1 pair of boots x (without or with the coat) = 14.
		expect(listOf(pairWords, all, null, 100)).toHaveLength(14);
		expect(listOf(pairWords, all, 4, 100)).toHaveLength(2);
	});

	it('a refused pair is in none of them', () => {
		const refused = pairWords.map((one) =>
			one.garmentA === 'shirt' && one.garmentB === 'skirt' ? { ...one, word: 'refused' as const } : one,
		) as typeof pairWords;
		for (const pieces of listOf(refused, all, null, 100)) {
			expect(pieces.includes(0) && pieces.includes(3)).toBe(false);
		}
	});

	it('the first few show different pieces rather than one pair of trousers again and again', () => {
		const shown = listOf(pairWords, all, null, 3).flat();
		for (const piece of [0, 1, 2, 3]) expect(shown).toContain(piece);
	});

	it('a single garment makes no outfit', () => {
		expect(listOf(pairWords, [0], null, 12)).toEqual([]);
	});
});
