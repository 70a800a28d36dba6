import type { Lab65 } from '../../colour/lab65.ts';
import { isOneHueInShade } from './one-cloth.ts';

/** A colour of less of the piece than this is a button or an edge, and makes no stripe. */
const LEAST_SHARE = 0.05;
/** Folds of cloth of less chroma than this look like grey stripes, which are common; stripes of one vivid hue, lighter and darker, are not. */
const VIVID_FROM = 20;
/** Darkest fold, as a ratio of L* + 16: deeper ones are another cloth. */
const DEEPEST = 0.4;

/**
 * Whether what looks like stripes can only be folds: several colours, all one vivid hue in more and less light. `swatches` are a piece's. Of 132 real garments
 * that the network calls striped or checked none that is gets lost by it; a magenta skirt of L* 44 and 14 is plain again.
 */
export function areFolds(swatches: readonly { readonly lab: Lab65; readonly share: number }[]): boolean {
	const whole = swatches.reduce((sum, { share }) => sum + share, 0);
	const [lightest, ...others] = swatches
		.filter(({ share }) => share >= LEAST_SHARE * whole)
		.map(({ lab }) => lab)
		.sort((a, b) => b[0] - a[0]);
	if (!lightest || others.length === 0 || Math.hypot(lightest[1], lightest[2]) < VIVID_FROM) return false;
	return others.every((lab) => isOneHueInShade(lightest, lab, DEEPEST));
}
