import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { inLanguage } from '../../../src/language/speak.ts';
import { colourWord, type PaletteColour } from '../../../src/wardrobe/words/palette-colour.ts';
import { withWordsApart } from '../../../src/wardrobe/words/palette-words.ts';
import { aPaletteColour } from '../../support/build-wardrobe.ts';

const unnamed = (id: string, lab: Lab65): PaletteColour => ({ ...aPaletteColour(id, lab), label: '' });
const wordsOf = (...labs: readonly Lab65[]) =>
	withWordsApart({ colours: labs.map((lab, index) => unnamed(`c${index}`, lab)) }).colours.map(colourWord);

describe('two palette colours of one word', () => {
	// Olives from memory, told by a language model; both are called "olive" by the survey's words.
	it.each<[string, Lab65, Lab65, [string, string]]>([
		['by lightness', [48, -5, 30], [36, -5, 28], ['olive', 'darker olive']],
		['the other way', [36, -5, 28], [48, -5, 30], ['olive', 'lighter olive']],
	])('are told apart %s, the first keeps its word', (_, one, other, told) => {
		expect(wordsOf(one, other)).toEqual(told);
	});

	it('are told apart in German too, where more colours share a word', () => {
		inLanguage('de', () => {
			const [one, other] = wordsOf([48, -5, 30], [44, -5, 28]);
			expect(other).toBe(`${one} (dunkler)`);
		});
	});

	it('leave a word given by hand as it is, and give it to no other', () => {
		const [word] = wordsOf([48, -5, 30]);
		const byHand = { ...unnamed('mine', [20, 0, 0]), label: word! };
		const told = withWordsApart({ colours: [unnamed('olive', [48, -5, 30]), byHand] }).colours.map(colourWord);
		expect(told[1]).toBe(word);
		expect(told[0]).not.toBe(word);
	});

	it('never share a word, whatever four colours a palette holds', () => {
		const channel = fc.integer({ min: -25, max: 25 });
		const labs = fc.uniqueArray(fc.tuple(fc.integer({ min: 15, max: 90 }), channel, channel), {
			minLength: 2,
			maxLength: 4,
			selector: String,
		});
		for (const language of ['en-GB', 'de'] as const)
			inLanguage(language, () =>
				fc.assert(
					fc.property(labs, (some) => {
						const told = wordsOf(...some);
						expect(new Set(told).size).toBe(told.length);
					}),
				),
			);
	});
});
