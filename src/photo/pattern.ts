import type { Pattern } from '../wardrobe/reading.ts';
import type { RawSwatch } from './swatches.ts';

/** Share of one colour from which a cloth counts as plain. */
const PLAIN_FROM = 0.85;

/** Plain or printed, from the shares of its colours. */
export function patternOf(swatches: readonly Pick<RawSwatch, 'share'>[]): Pattern {
	const total = swatches.reduce((sum, { share }) => sum + share, 0);
	const largest = Math.max(0, ...swatches.map(({ share }) => share)) / (total || 1);
	return largest >= PLAIN_FROM ? { type: 'plain', sure: largest } : { type: 'printed', sure: 1 - largest };
}
