import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outfitRows, outfitsThrough } from '../../../src/wardrobe/pairs/outfit-gain.ts';
import type { OutfitTable } from '../../../src/wardrobe/pairs/outfit-parts.ts';
import { countOutfits, outfitCeiling } from '../../../src/wardrobe/pairs/outfits.ts';
import { seededRandom } from '../../../src/wardrobe/words/seeded-random.ts';
import type { Slot } from '../../../src/wardrobe/words/slot.ts';

/** Outfits counted one by one, straight from their definition. */
function countedOneByOne({ slots, goes }: OutfitTable, members: readonly number[]): number {
	const of = (slot: Slot) => members.filter((member) => slots[member] === slot);
	const all = (parts: readonly number[]) =>
		parts.every((one, at) => parts.slice(at + 1).every((other) => goes(one, other)));
	const bodies = [
		...of('top').flatMap((top) => of('bottom').map((bottom) => [top, bottom])),
		...of('full').map((f) => [f]),
	];
	const shod = of('shoes').length > 0 ? bodies.flatMap((body) => of('shoes').map((shoe) => [...body, shoe])) : bodies;
	const dressed = shod.flatMap((parts) => [parts, ...of('outer').map((coat) => [...parts, coat])]);
	return dressed.filter(all).length;
}

const SLOTS_OF_OUTFITS: readonly Slot[] = ['top', 'top', 'bottom', 'full', 'shoes', 'outer', 'accessory'];

function aTable(count: number, density: number, seed: string): OutfitTable {
	const random = seededRandom(seed);
	const slots = Array.from({ length: count }, () => SLOTS_OF_OUTFITS[Math.floor(random() * SLOTS_OF_OUTFITS.length)]!);
	const cells = Array.from({ length: count * count }, () => random() < density);
	return { slots, goes: (one, other) => cells[Math.min(one, other) * count + Math.max(one, other)]! };
}
const everyone = (count: number) => Array.from({ length: count }, (_, index) => index);
const tables = fc.record({
	count: fc.integer({ min: 0, max: 24 }),
	density: fc.double({ min: 0, max: 1, noNaN: true }),
	seed: fc.string(),
});

describe('outfits', () => {
	it('are as many as counting them one by one finds', () => {
		fc.assert(
			fc.property(tables, ({ count, density, seed }) => {
				const table = aTable(count, density, seed);
				expect(countOutfits(table, everyone(count))).toBe(countedOneByOne(table, everyone(count)));
			}),
			{ numRuns: 200, seed: 1 },
		);
	});

	it('are as many in a large wardrobe, where pieces that go with the same others are counted at once', () => {
		const plain = aTable(120, 0.5, 'large');
		const twins: OutfitTable = {
			slots: [...plain.slots, ...plain.slots],
			goes: (one, other) => plain.goes(one % 120, other % 120),
		};
		const few = everyone(240).filter((index) => index % 120 < 100);
		expect(
			few.filter((index) => twins.slots[index] === 'top').length *
				few.filter((index) => twins.slots[index] === 'bottom').length,
		).toBeGreaterThan(1024);
		expect(countOutfits(twins, few)).toBe(countedOneByOne(twins, few));
	});

	it('that wear a piece are those that are gone without it', () => {
		fc.assert(
			fc.property(tables, ({ count, density, seed }) => {
				const table = aTable(count, density, seed);
				const all = countOutfits(table, everyone(count));
				for (const piece of everyone(count)) {
					const rest = everyone(count).filter((one) => one !== piece);
					const lastShoes = table.slots[piece] === 'shoes' && !rest.some((one) => table.slots[one] === 'shoes');
					// With the last shoes gone, outfits are counted without shoes: another count.
					const without = lastShoes ? 0 : countOutfits(table, rest);
					const through = outfitsThrough(outfitRows(table, rest), table.slots[piece]!, (other) =>
						table.goes(piece, other),
					);
					expect(through).toBe(all - without);
				}
			}),
			{ numRuns: 100, seed: 2 },
		);
	});

	it('reach the quota ceiling where everything goes together, and never exceed it', () => {
		const counts = { top: 10, bottom: 6, full: 3, shoes: 4, outer: 4 };
		const slots = Object.entries(counts).flatMap(([slot, count]) => new Array<Slot>(count).fill(slot as Slot));
		const table = (density: number) => ({ ...aTable(slots.length, density, 'ceiling'), slots });
		expect(countOutfits(table(1.1), everyone(slots.length))).toBe(outfitCeiling(counts));
		// (10 x 6 + 3) x 4 x (1 + 4), worked out by hand.
		expect(outfitCeiling(counts)).toBe(1260);
		expect(countOutfits(table(0.8), everyone(slots.length))).toBeLessThan(1260);
	});
});
