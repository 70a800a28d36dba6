import { deltaE2000Of, distanceBetween } from '../../colour/delta-e-many.ts';
import { chroma, hueGapDegrees, type Lab65 } from '../../colour/lab65.ts';
import { nthSmallest } from '../../colour/median.ts';
import { isNeutral } from '../../colour/neutrality.ts';
import { SLOTS, type Slot } from '../words/slot.ts';

/** Possible partners as aloneness sees them, in one order: main colours (L, a, b triples) and where each is worn. */
export type AlonePartners = { readonly labs: Float64Array; readonly slots: readonly Slot[] };

/** A slot with fewer possible partners says nothing by itself. */
const LEAST_IN_SLOT = 2;

/** Weights of what makes a piece stand alone: measured, see bench/NOTES.md. */
const SLOT_WEIGHT = 0.5;
const VIVID_WEIGHT = 0.25;

/** Distance to the palette that counts where there is none: what loud pieces have to most palettes. */
const WITHOUT_PALETTE = 25;

/** The mean over the slots of the nearest partner in each; 0 where no slot has enough of them. */
function nearestBySlots(distances: Float64Array, slots: readonly Slot[]): number {
	let sum = 0;
	let told = 0;
	for (const slot of SLOTS) {
		let nearest = Number.POSITIVE_INFINITY;
		let own = 0;
		for (let at = 0; at < distances.length; at++) {
			if (slots[at] !== slot) continue;
			own++;
			if (distances[at]! < nearest) nearest = distances[at]!;
		}
		if (own < LEAST_IN_SLOT) continue;
		sum += nearest;
		told++;
	}
	return sum / Math.max(1, told);
}

/**
 * How alone a colour stands, CIEDE2000 and more: its distance to the palette, the distance that a quarter of all possible partners keep within, half the mean over the slots of the nearest partner
 * in each, and a quarter of its own chroma.
 */
export function alonenessOf(lab: Lab65, { labs, slots }: AlonePartners, paletteMargin: number | null): number {
	const [L, a, b] = lab;
	const distances = new Float64Array(slots.length);
	for (let at = 0; at < distances.length; at++)
		distances[at] = deltaE2000Of(L, a, b, labs[3 * at]!, labs[3 * at + 1]!, labs[3 * at + 2]!);
	const bySlots = nearestBySlots(distances, slots);
	const quarter = slots.length > 0 ? nthSmallest(distances, Math.floor((slots.length - 1) / 4)) : 0;
	return (paletteMargin ?? WITHOUT_PALETTE) + quarter + SLOT_WEIGHT * bySlots + VIVID_WEIGHT * chroma(lab);
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
