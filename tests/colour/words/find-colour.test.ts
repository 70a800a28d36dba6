import { describe, expect, it } from 'vitest';
import { hexFromLab } from '../../../src/colour/lab65.ts';
import { basicTermsOf, colourGrid, coloursNamed } from '../../../src/colour/words/find-colour.ts';
import { wordsOf } from '../../../src/colour/words/word-table.ts';
import { colourWordRows } from '../../support/colour-words.ts';

const names = (text: string, language: 'en-GB' | 'en-US' | 'de' = 'en-GB') =>
	coloursNamed(text, language).map(({ word }) => word);

describe('a colour by its name', () => {
	// Mean colours of the survey, CC0; see fixtures/colour-words/README.md.
	it.each(colourWordRows('english.csv').filter(({ word, entry }) => word !== '' && !entry!.includes('fuschia')))(
		'$entry is the survey’s',
		({ entry, hex }) => {
			const [first] = coloursNamed(entry!, 'en-GB');
			expect(first?.word).toBe(entry);
			expect(hexFromLab(first!.lab)).toBe(hex);
		},
	);

	it('is found however grey is spelt and however it is written', () => {
		expect(names(' Dark  GRAY ')[0]).toBe('dark grey');
		expect(names('blue-grey', 'en-US')[0]).toBe('blue gray');
		expect(names('fuchsia')[0]).toBe('fuchsia');
	});

	it('offers what begins with it, then what holds it as a whole word', () => {
		expect(names('dark g')).toContain('dark green');
		expect(names('navy').slice(0, 2)).toEqual(['navy', 'navy blue']);
		expect(names('red', 'en-GB').slice(0, 3)).toEqual(['red', 'red pink', 'red brown']);
		expect(names('Dunkelgr', 'de')).toEqual(['dunkelgrau', 'dunkelgrün']);
	});

	it('is not made up: nothing for an empty text or no colour', () => {
		expect(names('')).toEqual([]);
		expect(names('trousers')).toEqual([]);
	});
});

describe('the grid of nameable colours', () => {
	it.each(['en-GB', 'en-US', 'de'] as const)(
		'shows every word of %s once, filed under its first basic term',
		(language) => {
			const shown = colourGrid(language).flatMap(({ term, colours }) =>
				colours.map(({ word }) => [word, term] as const),
			);
			expect(shown.length).toBe(wordsOf(language).length);
			expect(new Set(shown.map(([word]) => word)).size).toBe(shown.length);
			for (const [word, term] of shown) expect(basicTermsOf(word, language)[0]).toBe(term);
		},
	);
});
