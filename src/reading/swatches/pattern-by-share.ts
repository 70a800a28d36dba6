import type { Pattern } from '../../wardrobe/words/reading.ts';

/** Share of one colour from which cloth that is not looked at more closely counts as plain. */
const PLAIN_FROM = 0.85;
/** The shares alone say little: no surer than this. */
const SURE = 0.6;

/**
 * The pattern as far as the colours' shares tell it, for a piece too small to look at, or where no network is at hand: plain where one colour
 * covers nearly all. `swatches` are the piece's, heaviest first; none counts as plain.
 */
export function patternByShare(swatches: readonly { readonly share: number }[]): Pattern {
	const total = swatches.reduce((sum, { share }) => sum + share, 0) || 1;
	const largest = (swatches[0]?.share ?? total) / total;
	return { type: largest >= PLAIN_FROM ? 'plain' : 'printed', sure: SURE };
}
