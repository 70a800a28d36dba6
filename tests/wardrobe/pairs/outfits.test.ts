import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultSeason } from '../../../src/wardrobe/days/season-defaults.ts';
import { daysOfSeason } from '../../../src/wardrobe/days/usual-days.ts';
import { countOutfits } from '../../../src/wardrobe/pairs/outfit-count.ts';
import {
	eachOutfit,
	type OutfitTable,
	outfitShapes,
	outfitTable,
	shapesWith,
} from '../../../src/wardrobe/pairs/outfits.ts';
import { KIND_NAMES, KINDS, type Kind, slotOfKind } from '../../../src/wardrobe/words/kind.ts';
import { seededRandom } from '../../../src/wardrobe/words/seeded-random.ts';
import { aGarment } from '../../support/build-wardrobe.ts';

/** Outfits straight from their definition: every subset of the members, looked at as it is. */
function countedOneByOne(table: OutfitTable, members: readonly number[]): number {
	const worn = members.filter((one) => table.inSeason[one]);
	const anyShoes = worn.some((one) => slotOfKind(table.kinds[one]!) === 'shoes');
	const isOutfit = (pieces: readonly number[]) => {
		const kinds = pieces.map((one) => table.kinds[one]!);
		const count = (slot: string) => kinds.filter((kind) => slotOfKind(kind) === slot).length;
		const tops = kinds.filter((kind) => slotOfKind(kind) === 'top');
		const isOver = (kind: Kind) => 'over' in KINDS[kind];
		const alone = tops.length === 1 && tops[0] !== 'cardigan' && tops[0] !== 'waistcoat';
		const layered = tops.length === 2 && tops.filter(isOver).length === 1;
		const overDress = tops.length === 0 || (tops.length === 1 && tops[0] === 'cardigan');
		const body = count('full') === 1 ? overDress && count('bottom') === 0 : count('bottom') === 1 && (alone || layered);
		const clo = pieces.reduce(
			(sum, one) => sum + (slotOfKind(table.kinds[one]!) === 'outer' ? 0 : table.clo[one]!),
			0.04,
		);
		return (
			body &&
			count('full') <= 1 &&
			count('shoes') === (anyShoes ? 1 : 0) &&
			count('outer') <= 1 &&
			count('legwear') + count('accessory') === 0 &&
			clo >= table.warmth.least &&
			clo <= table.warmth.most &&
			pieces.every((one, at) => pieces.slice(at + 1).every((other) => table.goes(one, other)))
		);
	};
	let found = 0;
	for (let subset = 1; subset < 2 ** worn.length; subset++)
		if (isOutfit(worn.filter((_, at) => (subset >> at) & 1))) found++;
	return found;
}

function aTable(count: number, density: number, seed: string): OutfitTable {
	const random = seededRandom(seed);
	const kinds = Array.from({ length: count }, () => KIND_NAMES[Math.floor(random() * KIND_NAMES.length)]!);
	const cells = Array.from({ length: count * count }, () => random() < density);
	return {
		kinds,
		inSeason: kinds.map(() => random() < 0.9),
		clo: kinds.map((kind) => KINDS[kind].clo),
		warmth: { least: 0.2 + 0.2 * random(), most: 0.6 + 0.4 * random() },
		goes: (one, other) => cells[Math.min(one, other) * count + Math.max(one, other)]!,
	};
}
const everyone = (count: number) => Array.from({ length: count }, (_, index) => index);
const ones = (count: number) => everyone(count).map(() => 1);
const countOf = (table: OutfitTable, members: readonly number[]) =>
	countOutfits(table, outfitShapes(table, members), ones(table.kinds.length));
const tables = fc.record({
	count: fc.integer({ min: 0, max: 12 }),
	density: fc.double({ min: 0.3, max: 1, noNaN: true }),
	seed: fc.string(),
});

const SPRING = defaultSeason({ id: 's', name: 's', startsOn: '2026-03-01', endsOn: '2026-05-31', addedAt: '' });
const SUMMER = defaultSeason({ id: 's', name: 's', startsOn: '2026-06-01', endsOn: '2026-08-31', addedAt: '' });
const WINTER = defaultSeason({ id: 's', name: 's', startsOn: '2025-12-01', endsOn: '2026-02-28', addedAt: '' });
/** Outfits of garments of these kinds where everything goes together. */
function outfitsOf(kinds: readonly Kind[], season = SPRING): string[] {
	const garments = kinds.map((kind, index) => aGarment({ id: `${kind} ${index}`, kind, lab: [50, 0, 0] }));
	const found: string[] = [];
	eachOutfit(
		outfitTable(garments, () => true, season),
		garments.keys(),
		(pieces) => found.push(pieces.map((piece) => kinds[piece]).join(' ')),
	);
	return found.sort();
}

describe('outfits', () => {
	it('are as many as looking at every set of pieces finds', () => {
		fc.assert(
			fc.property(tables, ({ count, density, seed }) => {
				const table = aTable(count, density, seed);
				expect(countOf(table, everyone(count))).toBe(countedOneByOne(table, everyone(count)));
			}),
			{ numRuns: 200, seed: 1 },
		);
	});

	it('that wear a piece are those that are gone without it', () => {
		fc.assert(
			fc.property(tables, ({ count, density, seed }) => {
				const table = aTable(count, density, seed);
				const all = countOf(table, everyone(count));
				for (const piece of everyone(count)) {
					const rest = everyone(count).filter((one) => one !== piece);
					const isShoe = (one: number) => table.inSeason[one] && slotOfKind(table.kinds[one]!) === 'shoes';
					// With the last shoes gone, outfits are counted without shoes: another count.
					const without = isShoe(piece) && !rest.some(isShoe) ? 0 : countOf(table, rest);
					const through = shapesWith(outfitShapes(table, everyone(count)), piece);
					expect(countOutfits(table, through, ones(count))).toBe(all - without);
				}
			}),
			{ numRuns: 100, seed: 2 },
		);
	});

	it('of a wardrobe too large to look at are estimated within a tenth', () => {
		for (const seed of ['a', 'b', 'c']) {
			const table = { ...aTable(150, 0.7, seed), warmth: { least: 0.3, most: 0.85 } };
			let exact = 0;
			eachOutfit(table, everyone(150), () => exact++);
			expect(exact).toBeGreaterThan(10_000);
			expect(Math.abs(countOf(table, everyone(150)) / exact - 1)).toBeLessThan(0.1);
		}
	});

	it('wear a cardigan, jumper or waistcoat over a shirt or T-shirt, a cardigan never alone', () => {
		expect(outfitsOf(['shirt', 'cardigan', 'trousers'])).toEqual(['shirt cardigan trousers', 'shirt trousers']);
		expect(outfitsOf(['t-shirt', 'jumper', 'jeans'])).toEqual([
			'jumper jeans',
			't-shirt jeans',
			't-shirt jumper jeans',
		]);
		expect(outfitsOf(['jumper', 'cardigan', 'trousers'])).toEqual(['jumper trousers']);
	});

	it('wear a cardigan over a dress too, which then suits days that are too cold for the dress alone', () => {
		expect(outfitsOf(['dress', 'cardigan'])).toEqual(['dress', 'dress cardigan']);
		expect(outfitsOf(['dress', 'jumper', 'waistcoat'])).toEqual(['dress']);
		const frost = { ...WINTER, days: { ...daysOfSeason(WINTER), coldDay: -8, warmDay: 0 } };
		expect(outfitsOf(['dress', 'cardigan', 'boots'], frost)).toEqual(['dress cardigan boots']);
	});

	it('suit the days of the season: no jumper over a shirt in summer, no bare legs in winter', () => {
		expect(outfitsOf(['shirt', 'jumper', 'trousers', 'shoes'], SUMMER)).toEqual([
			'jumper trousers shoes',
			'shirt trousers shoes',
		]);
		expect(outfitsOf(['shirt', 'jumper', 'trousers', 'shoes'], WINTER)).toContain('shirt jumper trousers shoes');
		expect(outfitsOf(['t-shirt', 'shorts', 'sandals'], WINTER)).toEqual([]);
		expect(outfitsOf(['t-shirt', 'shorts', 'sandals'], SUMMER)).toEqual(['t-shirt shorts sandals']);
	});
});
