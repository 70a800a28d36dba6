import { isInSeason } from '../days/in-season.ts';
import { slotOfKind } from '../words/kind.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { SLOTS } from '../words/slot.ts';
import { colourGap, isMissing } from './colour-gap.ts';
import type { Gap } from './gap.ts';
import type { GapFacts } from './gap-facts.ts';
import { pieceGap } from './piece-gap.ts';
import { slotGap } from './slot-gap.ts';

/**
 * What is missing: tentative colours last, else by the pictures that one such piece makes wearable, then by the share of the whole palette that is open in its colour,
 * pieces before colours before slots. Nothing that another photo of the clothes would change decides beyond that.
 */
export function gapsOf(input: SeasonInput, facts: GapFacts, held = heldGarments(input)): Gap[] {
	const spare = input.garments.filter(
		(garment) => garment.place === 'stored' && !held.includes(garment) && isInSeason(garment, input.season),
	);
	const pieces = facts.wished.map(({ piece, outfitsAdded }) => pieceGap(piece, outfitsAdded, input, facts));
	const colours = facts.bands.asked.filter(isMissing).map((asked) => colourGap(asked, input, facts, spare));
	const slots = SLOTS.map((slot) => ({ slot, count: held.filter(({ kind }) => slotOfKind(kind) === slot).length }))
		.filter(({ slot, count }) => count < input.season.quotas[slot])
		.map(({ slot, count }) => slotGap(slot, count, input, facts, spare));
	const order = ['piece', 'colour', 'slot'] as const satisfies readonly Gap['kind'][];
	return [...pieces, ...colours, ...slots].sort(
		(a, b) =>
			Number(a.tentative) - Number(b.tentative) ||
			b.completes - a.completes ||
			b.paletteShare - a.paletteShare ||
			order.indexOf(a.kind) - order.indexOf(b.kind) ||
			b.missing - a.missing ||
			(a.id < b.id ? -1 : 1),
	);
}
