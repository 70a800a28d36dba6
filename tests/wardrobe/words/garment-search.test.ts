import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { inLanguage } from '../../../src/language/speak.ts';
import { isFoundBy, searchWordsOf } from '../../../src/wardrobe/words/garment-search.ts';
import { aGarment } from '../../support/build-wardrobe.ts';

type Changes = Parameters<typeof aGarment>[0];

const found = (text: string, lab: Lab65, changes: Partial<Changes> = {}, paletteNames: readonly string[] = []) =>
	isFoundBy(text, searchWordsOf(aGarment({ id: 'x', name: 'Ada’s', kind: 'shirt', lab, ...changes }), paletteNames));

// Colours of cloth as such pieces are: from memory, told by a language model.
const NAVY: Lab65 = [20, 2, -18];
const GREY: Lab65 = [55, 0, -1];
const BEIGE: Lab65 = [75, 4, 14];
const BURGUNDY: Lab65 = [25, 26, 8];

describe('searching the wardrobe', () => {
	it('finds by colour word and by the basic term it is filed under', () => {
		expect(found('navy', NAVY)).toBe(true);
		expect(found('blue', NAVY)).toBe(true);
		expect(found('red', BURGUNDY)).toBe(true);
		expect(found('navy', BURGUNDY)).toBe(false);
	});

	it('takes grey and gray for one', () => {
		expect(found('grey', GREY)).toBe(true);
		expect(found('gray', GREY)).toBe(true);
		expect(inLanguage('en-US', () => found('grey', GREY))).toBe(true);
	});

	it('does not take red for reddish: a colour is met whole', () => {
		expect(found('red', BEIGE)).toBe(false);
		expect(found('red', BEIGE, { notes: 'a reddish beige' })).toBe(false);
		expect(found('reddish', BEIGE, { notes: 'a reddish beige' })).toBe(true);
	});

	it('finds by kind, slot, pattern and notes, from the beginning of a word on, all words together', () => {
		expect(found('shir', NAVY)).toBe(true);
		expect(found('tops', NAVY)).toBe(true);
		expect(found('plain navy shirt', NAVY)).toBe(true);
		expect(found('seam', NAVY, { notes: 'mend the seam' })).toBe(true);
		expect(found('navy coat', NAVY)).toBe(false);
	});

	it('finds by the user’s own palette names, in any language, and everything by nothing', () => {
		expect(found('hearth', BURGUNDY, {}, ['Hearth red'])).toBe(true);
		expect(inLanguage('de', () => found('blau hemd', NAVY))).toBe(true);
		expect(found('', NAVY)).toBe(true);
	});
});
