import { say } from '../../../src/language/speak.ts';

/** How much a weight of 0..1 counts, in words: a step of a slider is a word, not a figure. */
export function weightWord(weight: number): string {
	if (weight === 0) return say('weights.nothing');
	if (weight < 0.35) return say('weights.little');
	if (weight < 0.65) return say('weights.some');
	if (weight < 0.95) return say('weights.much');
	return say('weights.most');
}
