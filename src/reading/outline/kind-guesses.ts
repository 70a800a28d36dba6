import type { Kind } from '../../wardrobe/words/kind.ts';
import type { Reading } from '../../wardrobe/words/reading.ts';

/** The kinds that the parser's garment head knows, in its order. */
const KINDS_OF_HEAD: readonly Kind[] = [
	'dress',
	'hat',
	'long-sleeve',
	'jacket',
	'trousers',
	'shirt',
	'shoes',
	'shorts',
	'skirt',
	't-shirt',
	'blazer',
	'hoodie',
	'polo',
	'top',
];

/** Guesses under this are not worth showing. */
const LEAST_PROBABILITY = 0.02;

/** Suggested kinds of a single garment, likeliest first, from the head's probabilities. */
export const kindGuesses = (garmentKind: readonly number[]): Reading['kindGuesses'] =>
	garmentKind
		.map((probability, index) => ({ kind: KINDS_OF_HEAD[index]!, probability }))
		.filter(({ probability }) => probability >= LEAST_PROBABILITY)
		.sort((a, b) => b.probability - a.probability);
