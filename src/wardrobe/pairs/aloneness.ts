import { deltaE2000Of, distanceBetween } from '../../colour/delta-e-many.ts';
import { chroma, hueGapDegrees, type Lab65 } from '../../colour/lab65.ts';
import { nthSmallest } from '../../colour/median.ts';
import { isNeutral } from '../../colour/neutrality.ts';

/** Weights of what makes a piece stand alone: chosen on one half of real homes, palettes and loud pieces, and held to the other, see bench/NOTES.md. */
const QUARTER_WEIGHT = 1.5;
const VIVID_WEIGHT = 0.75;

/** Distance to the palette that counts where there is none: what loud pieces have to most palettes. */
const WITHOUT_PALETTE = 25;

/**
 * How alone a colour stands, CIEDE2000 and more: its distance to the palette, one and a half times the distance that a quarter of all possible partners keep within, and three quarters of its own
 * chroma. `partners`: their main colours, L, a, b triples.
 */
export function alonenessOf(lab: Lab65, partners: Float64Array, paletteMargin: number | null): number {
	const [L, a, b] = lab;
	const distances = new Float64Array(partners.length / 3);
	for (let at = 0; at < distances.length; at++)
		distances[at] = deltaE2000Of(L, a, b, partners[3 * at]!, partners[3 * at + 1]!, partners[3 * at + 2]!);
	const quarter = distances.length > 0 ? nthSmallest(distances, Math.floor((distances.length - 1) / 4)) : 0;
	return (paletteMargin ?? WITHOUT_PALETTE) + QUARTER_WEIGHT * quarter + VIVID_WEIGHT * chroma(lab);
}

/** Coloured pieces this near in hue carry each other, degrees (measured on wardrobes of nine real outfits). */
const HUE_NEIGHBOUR_WITHIN = 30;

/** The partner that could carry the piece: the nearest of those of a near hue, else the nearest of all; -1 without partners. */
export function carrierOf(lab: Lab65, partners: readonly Lab65[]): number {
	let best = -1;
	let bestRank = Number.POSITIVE_INFINITY;
	for (const [index, partner] of partners.entries()) {
		const isNearHue = !isNeutral(partner) && hueGapDegrees(lab, partner) <= HUE_NEIGHBOUR_WITHIN;
		const rank = distanceBetween(lab, partner) + (isNearHue ? 0 : 1000);
		if (rank < bestRank) {
			bestRank = rank;
			best = index;
		}
	}
	return best;
}
