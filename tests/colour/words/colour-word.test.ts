import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { colourWord } from '../../../src/colour/words/colour-word.ts';
import { ENGLISH_WORDS } from '../../../src/colour/words/english-words.ts';
import { GERMAN_WORDS } from '../../../src/colour/words/german-words.ts';
import { ENGLISH_GREYS, GERMAN_GREYS } from '../../../src/colour/words/near-grey.ts';
import { entriesOf } from '../../../src/colour/words/word-table.ts';
import { colourWordRows } from '../../support/colour-words.ts';

const anyColour = fc.tuple(
	fc.double({ min: 0, max: 100, noNaN: true }),
	fc.double({ min: -60, max: 60, noNaN: true }),
	fc.double({ min: -60, max: 60, noNaN: true }),
);

describe('the tables of words', () => {
	// "Many Languages Many Colors", CC0 1.0; see fixtures/colour-words/README.md.
	it.each([
		['english.csv', ENGLISH_WORDS, [] as string[]],
		['german.csv', GERMAN_WORDS, ['weiß', 'hellgrau', 'dunkelgrau']],
	] as const)('hold exactly what %s says of the survey', (file, words, placed) => {
		const listed = colourWordRows(file).filter(({ word }) => word !== '');
		const table = words
			.filter(({ word }) => !(placed as readonly string[]).includes(word))
			.flatMap(({ word, entries }) => entries.split(', ').map((entry) => `${entry} ${word}`));
		expect(table.toSorted()).toEqual(listed.map(({ entry, hex, word }) => `${entry} ${hex} ${word}`).toSorted());
	});

	it('give a reason for every entry of the survey, used or left out', () => {
		const rows = [...colourWordRows('english.csv'), ...colourWordRows('german.csv')];
		expect(rows.length).toBe(545 + 49);
		expect(rows.filter(({ reason }) => !reason)).toEqual([]);
	});

	it('have every step of their grey scale as a word', () => {
		for (const [scale, words] of [
			[ENGLISH_GREYS, ENGLISH_WORDS],
			[GERMAN_GREYS, GERMAN_WORDS],
		] as const)
			expect(scale.filter(([step]) => !words.some(({ word }) => word === step))).toEqual([]);
	});
});

describe('the word of a colour', () => {
	// Colours of cloth as such pieces are: from memory, told by a language model.
	it.each([
		['navy', [20, 2, -18]],
		['navy', [22, 0, -9]],
		['black', [17, 1, -4]],
		['charcoal', [29, 0, -2]],
		['grey', [55, 0, -1]],
		['white', [92, 0, 2]],
		['ivory', [90, 1, 9]],
		['cream', [86, 2, 15]],
		['tan', [70, 4, 20]],
		['rust', [42, 32, 35]],
		['red', [42, 58, 40]],
		['burgundy', [25, 26, 8]],
		['olive', [37, -4, 19]],
		['sage', [62, -9, 12]],
		['teal', [38, -20, -12]],
		['mustard', [65, 12, 58]],
		['light blue', [76, -3, -16]],
		['lavender', [72, 12, -17]],
	] as const)('%s', (word, lab) => expect(colourWord(lab, 'en-GB', 0)).toBe(word));

	it('calls no slate royal', () => {
		for (const L of [30, 36, 40, 44])
			for (const b of [-8, -12, -20]) {
				expect(colourWord([L, -1, b], 'en-GB', 0)).not.toBe('royal blue');
				expect(colourWord([L, -1, b], 'de', 0)).not.toBe('königsblau');
			}
		expect(colourWord([33, 30, -60], 'en-GB', 0)).toBe('royal blue');
	});

	it('calls no greyish green lime', () => {
		for (const lab of [
			[68, -8, 18],
			[70, -12, 22],
			[74, -8, 26],
		] as const)
			expect(colourWord(lab, 'en-GB', 0)).not.toBe('lime');
		expect(colourWord([85, -40, 75], 'en-GB', 0)).toBe('lime');
	});

	it('never carries a hue that the photo cannot tell from grey', () => {
		fc.assert(
			fc.property(anyColour, fc.double({ min: 0, max: 20, noNaN: true }), (lab, error) => {
				const steps = ENGLISH_GREYS.map(([word]) => word);
				const fromGrey = deltaE2000(lab as Lab65, [lab[0], 0, 0]);
				if (fromGrey < 0.64 * error) expect(steps).toContain(colourWord(lab, 'en-GB', error));
			}),
		);
	});

	it('of a surer photo is finer: a bluish grey at an error of 9 is blue-grey at 3', () => {
		expect(colourWord([50, -1, -5], 'en-GB', 9)).toBe('grey');
		expect(colourWord([50, -1, -5], 'en-GB', 3)).toBe('blue-grey');
	});

	it('is spelt as the language spells it', () => {
		expect(colourWord([55, 0, 0], 'en-US', 0)).toBe('gray');
		expect(colourWord([38, 0, 0], 'en-US', 0)).toBe('dark gray');
		expect(colourWord([55, 0, 0], 'de', 0)).toBe('grau');
		fc.assert(
			fc.property(anyColour, (lab) => {
				expect(colourWord(lab, 'en-US', 3).replaceAll('gray', 'grey')).toBe(colourWord(lab, 'en-GB', 3));
			}),
		);
	});

	it('does not depend on what was asked before', () => {
		const again = (lab: Lab65) => [colourWord(lab, 'en-GB', 0), colourWord(lab, 'de', 0), colourWord(lab, 'en-GB', 0)];
		fc.assert(
			fc.property(anyColour, (lab) => {
				const [first, , third] = again(lab);
				expect(third).toBe(first);
			}),
		);
	});

	it('comes from the table of the language', () => {
		fc.assert(
			fc.property(anyColour, (lab) => {
				expect(ENGLISH_WORDS.map(({ word }) => word)).toContain(colourWord(lab, 'en-GB', 0));
				expect(GERMAN_WORDS.map(({ word }) => word)).toContain(colourWord(lab, 'de', 0));
			}),
		);
	});

	it('reads every entry of the tables as a colour', () => {
		for (const word of [...ENGLISH_WORDS, ...GERMAN_WORDS])
			for (const { lab } of entriesOf(word)) expect(lab[0]).toBeGreaterThan(5);
	});
});
