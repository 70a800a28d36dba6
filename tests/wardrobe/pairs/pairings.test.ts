import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { pairingsFromReadings } from '../../../src/wardrobe/pairs/pairings.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import { toldReading } from '../../../src/wardrobe/words/told-reading.ts';
import { aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { piece } from '../pictures/build-picture.ts';

const rustOverInk = aReading([aSwatch(RUST, 0.5, 'top'), aSwatch(INK, 0.4, 'bottom'), aSwatch(OAT, 0.1, 'shoes')]);

describe('what the inspirations wear with what', () => {
	it('is every pair of slots of one picture, with its colours', () => {
		const pairings = pairingsFromReadings([rustOverInk]);
		expect(pairings.map(({ slotA, slotB, photos }) => [slotA, slotB, photos])).toEqual([
			['top', 'bottom', 1],
			['top', 'shoes', 1],
			['bottom', 'shoes', 1],
		]);
		expect(pairings[0]).toMatchObject({ labA: RUST, labB: INK });
	});

	it('counts pictures that show nearly the same, most pictures first', () => {
		const nearly = aReading([aSwatch([46, 38, 40], 0.6, 'top'), aSwatch([19, 0, -3], 0.4, 'bottom')]);
		expect(pairingsFromReadings([nearly, rustOverInk])[0]).toMatchObject({ slotA: 'top', slotB: 'bottom', photos: 2 });
	});

	it('keeps pictures apart that share one colour of the two alone', () => {
		const overTeal = aReading([aSwatch(RUST, 0.5, 'top'), aSwatch(TEAL, 0.5, 'bottom')]);
		const tops = pairingsFromReadings([rustOverInk, overTeal]).filter(({ slotB }) => slotB === 'bottom');
		expect(tops.map(({ labB, photos }) => [labB, photos])).toEqual(
			expect.arrayContaining([
				[INK, 1],
				[TEAL, 1],
			]),
		);
		expect(tops).toHaveLength(2);
	});

	it('leaves trim and scenes out, and pieces that take each other’s place', () => {
		const trim = aReading([aSwatch(RUST, 0.6, 'top'), aSwatch(TEAL, 0.05, 'top'), aSwatch(INK, 0.35, 'bottom')]);
		expect(pairingsFromReadings([trim])).toHaveLength(1);
		expect(pairingsFromReadings([aReading([aSwatch(RUST, 0.5), aSwatch(INK, 0.5)])])).toEqual([]);
		expect(pairingsFromReadings([aReading([aSwatch(RUST, 0.5, 'full'), aSwatch(INK, 0.5, 'bottom')])])).toEqual([]);
		expect(pairingsFromReadings([])).toEqual([]);
	});

	it('does not depend on the order of the pictures', () => {
		// Plus 0 turns -0, which no reading holds, into 0.
		const tint = fc.double({ min: -9, max: 9, noNaN: true }).map((value) => value + 0);
		fc.assert(
			fc.property(fc.array(fc.tuple(tint, tint), { minLength: 1, maxLength: 8 }), (tints) => {
				const board = tints.map(([x, y]) =>
					aReading([aSwatch([45 + x, 38, 40], 0.6, 'top'), aSwatch([18, y, -3], 0.4, 'bottom')]),
				);
				expect(pairingsFromReadings([...board].reverse())).toEqual(pairingsFromReadings(board));
			}),
		);
	});

	it('names the kinds that most pictures wear: navy trousers with a rust jumper, three pictures', () => {
		const navy: Lab65 = [22, 2, -20];
		const worn = (top: Kind) =>
			aReading([aSwatch(RUST, 0.5, 'top'), aSwatch(navy, 0.5, 'bottom')], {
				pieces: [piece(top, RUST), piece('trousers', navy)],
			});
		const [first] = pairingsFromReadings([worn('jumper'), worn('shirt'), worn('jumper')]);
		expect(first).toMatchObject({ slotA: 'top', kindA: 'jumper', slotB: 'bottom', kindB: 'trousers', photos: 3 });
		const told = toldReading(worn('shirt'), [{ piece: 0, kind: 'coat' }]);
		expect(pairingsFromReadings([told])[0]).toMatchObject({ slotA: 'outer', kindA: 'coat' });
	});
});
