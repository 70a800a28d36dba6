import type { Kind } from '../wardrobe/kind.ts';
import type { Reading } from '../wardrobe/reading.ts';
import type { Slot } from '../wardrobe/slot.ts';

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
];

/** Most common kind of each slot, for a network without a garment head. Common practice, no source. */
const USUAL_KIND: Readonly<Record<Slot, Kind>> = {
	top: 'shirt',
	outer: 'jacket',
	bottom: 'trousers',
	full: 'dress',
	legwear: 'tights',
	shoes: 'shoes',
	accessory: 'scarf',
};

/** Guesses under this are not worth showing. */
const LEAST_PROBABILITY = 0.02;

/** Suggested kinds of a single garment, likeliest first. `areaBySlot` are shares of the clothing, summing to 1. */
export function kindGuesses(
	garmentKind: readonly number[] | null,
	areaBySlot: ReadonlyMap<Slot, number>,
): Reading['kindGuesses'] {
	const guesses = garmentKind
		? garmentKind.map((probability, index) => ({ kind: KINDS_OF_HEAD[index]!, probability }))
		: [...areaBySlot].map(([slot, probability]) => ({ kind: USUAL_KIND[slot], probability }));
	return guesses
		.filter(({ probability }) => probability >= LEAST_PROBABILITY)
		.sort((a, b) => b.probability - a.probability);
}
