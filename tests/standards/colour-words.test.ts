import { describe, expect, it } from 'vitest';
import { type Lab65, labFromHex } from '../../src/colour/lab65.ts';
import { UNRELIABLE_CENTROIDS } from '../../src/colour/name.ts';
import { colourWord } from '../../src/colour/words/colour-word.ts';
import { basicTermsOf } from '../../src/colour/words/find-colour.ts';
import type { Language } from '../../src/colour/words/language.ts';
import { ENGLISH_GREYS, GERMAN_GREYS } from '../../src/colour/words/near-grey.ts';
import { colourWordRows } from '../support/colour-words.ts';
import { numbersOf, referenceRows } from '../support/reference.ts';

const termsOf = (lab: Lab65, language: Language): readonly string[] => {
	const word = colourWord(lab, language, 0);
	const terms = basicTermsOf(word, language);
	expect(terms, `${word} is filed under a basic term`).not.toEqual([]);
	return terms;
};

const percent = (right: number, all: number): number => (100 * right) / all;

// The xkcd colour survey, CC0; see fixtures/colour-words/README.md. Half of it chose the factors of naming, this half did not.
const heldOut = colourWordRows('xkcd.csv').filter(({ part }) => part === 'test');

describe('colour words and another survey', () => {
	it('agree in word or basic term on 85 % of its centroids that were not used for tuning', () => {
		expect(heldOut.length).toBeGreaterThan(350);
		const right = heldOut.filter(({ hex, word, terms }) => {
			const lab = labFromHex(hex!)!;
			return (
				colourWord(lab, 'en-GB', 0) === word || termsOf(lab, 'en-GB').some((term) => terms!.split(' ').includes(term))
			);
		});
		expect(percent(right.length, heldOut.length)).toBeGreaterThanOrEqual(85);
	});

	it('agree in the first basic term alone on 80 %, which is stricter', () => {
		const right = heldOut.filter(({ hex, terms }) => termsOf(labFromHex(hex!)!, 'en-GB')[0] === terms!.split(' ')[0]);
		expect(percent(right.length, heldOut.length)).toBeGreaterThanOrEqual(80);
	});

	it('agree in German on 80 %, where the words are fewer', () => {
		const right = heldOut.filter(({ hex, terms }) =>
			termsOf(labFromHex(hex!)!, 'de').some((term) => terms!.split(' ').includes(term)),
		);
		expect(percent(right.length, heldOut.length)).toBeGreaterThanOrEqual(80);
	});
});

// Berlin and Kay (1969), Basic Color Terms; which Munsell chips: from memory. See fixtures/colour-words/README.md.
describe.each(['en-GB', 'de'] as const)('the best examples of the eleven basic colour terms, in %s', (language) => {
	it.each(
		colourWordRows('basic-terms.csv').map((row) => ({
			term: row.term!,
			munsell: row.munsell!,
			lab: numbersOf(row, 'L', 'a', 'b') as unknown as Lab65,
		})),
	)('$munsell is $term', ({ term, lab }) => expect(termsOf(lab, language)[0]).toBe(term));
});

// Kelly and Judd (1976), NBS Special Publication 440: names of surface colours and the basic terms that its first level files them under.
// Centroids that lie outside their block, and greys, blacks and whites with a tint, which the standard files under the tint, are left out.
const LEVEL_1: Readonly<Record<string, readonly string[]>> = {
	olive: ['green', 'brown', 'yellow'],
	'yellow green': ['green', 'yellow'],
	'blue green': ['green', 'blue'],
	violet: ['purple', 'blue'],
	gray: ['grey'],
};

describe('colour words and the standard names of surface colours', () => {
	// The factors were chosen with the odd numbers left aside.
	const rows = referenceRows('iscc-nbs.csv').filter(
		({ number, name }) =>
			Number(number) % 2 === 1 && !UNRELIABLE_CENTROIDS.has(Number(number)) && !/(gray|black|white)$/.test(name!),
	);

	it('agree in basic term on 85 % of those that were not used for tuning', () => {
		expect(rows.length).toBeGreaterThan(90);
		const right = rows.filter((row) => {
			const allowed = LEVEL_1[row.level1!] ?? [row.level1!];
			return termsOf(numbersOf(row, 'L65', 'a65', 'b65') as unknown as Lab65, 'en-GB').some((term) =>
				allowed.includes(term),
			);
		});
		expect(percent(right.length, rows.length)).toBeGreaterThanOrEqual(85);
	});
});

describe('the grey scales', () => {
	it('go from black to white without a step down', () => {
		for (const scale of [ENGLISH_GREYS, GERMAN_GREYS])
			expect(scale.map(([, under]) => under)).toEqual(scale.map(([, under]) => under).toSorted((a, b) => a - b));
	});
});
