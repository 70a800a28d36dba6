import { describe, expect, it } from 'vitest';
import { isWished } from '../../../src/wardrobe/wishes/is-wished.ts';

const jacket = { kind: 'piece', name: 'black jacket', slot: 'outer', paletteColourId: 'black' } as const;
const navyTop = { kind: 'colour', name: null, slot: 'top', paletteColourId: 'navy' } as const;

describe('a gap', () => {
	it.each([
		['a piece of pictures, wished for by its name', jacket, { ...jacket, paletteColourId: null }, true],
		['a piece, where another of its slot and colour is wished for', jacket, { ...jacket, name: 'black coat' }, false],
		['a colour, wished for in its slot', navyTop, { ...navyTop, name: 'a blouse for work' }, true],
		['a colour, wished for in another slot', navyTop, { ...navyTop, name: 'a skirt', slot: 'bottom' as const }, false],
	])('%s', (_, gap, wish, expected) => {
		expect(isWished(gap, [wish])).toBe(expected);
		expect(isWished(gap, [])).toBe(false);
	});
});
