import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { steadyOrder } from '../../../src/wardrobe/words/steady-order.ts';

const ordered = (worths: Readonly<Record<string, number>>, before: readonly string[], step = 0.5) =>
	steadyOrder(
		Object.keys(worths),
		(id) => id,
		(id) => worths[id]!,
		{ before, step },
	);

describe('an order that is steady', () => {
	it.each([
		['by worth, where nothing stood before', { a: 1, b: 3, c: 2 }, [], ['b', 'c', 'a']],
		['as before, where nothing is worth clearly more', { a: 1, b: 1.5, c: 1.2 }, ['a', 'b', 'c'], ['a', 'b', 'c']],
		['another one first, where it is worth clearly more', { a: 1, b: 1.6, c: 1 }, ['a', 'b', 'c'], ['b', 'a', 'c']],
		['a new one behind what stood before, worth a little less', { a: 1, b: 1, c: 1.4 }, ['a', 'b'], ['a', 'b', 'c']],
		['a new one first, where it is worth clearly more', { a: 1, b: 1, c: 1.6 }, ['a', 'b'], ['c', 'a', 'b']],
		['new ones among themselves by worth', { a: 1, b: 0.2, c: 0.3 }, ['a'], ['a', 'c', 'b']],
		['without what is gone', { b: 1, c: 1 }, ['a', 'c', 'b'], ['c', 'b']],
	] as const)('%s', (_, worths, before, expected) => {
		expect(ordered(worths, before)).toEqual(expected);
	});

	it('holds every item once, and is the same again where it is its own before and no step is passed', () => {
		fc.assert(
			fc.property(
				fc.dictionary(fc.string(), fc.double({ min: 0, max: 5, noNaN: true })),
				fc.array(fc.string()),
				(worths, before) => {
					const once = ordered(worths, before);
					expect([...once].sort()).toEqual(Object.keys(worths).sort());
					expect(ordered(worths, ordered(worths, []))).toEqual(ordered(worths, []));
				},
			),
			{ seed: 1 },
		);
	});
});
