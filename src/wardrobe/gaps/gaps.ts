import { isInSeason } from '../days/in-season.ts';
import { fitsPalette } from '../fit/fit.ts';
import { wearsFull } from '../pictures/wears-full.ts';
import { WORTH_STEP } from '../pictures/wished-pieces.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { SLOTS } from '../words/slot.ts';
import { steadyOrder } from '../words/steady-order.ts';
import { colourGap, isMissing } from './colour-gap.ts';
import type { Gap } from './gap.ts';
import type { GapFacts } from './gap-facts.ts';
import { pieceGap } from './piece-gap.ts';
import { slotGap } from './slot-gap.ts';

/** What the order is by, in pictures: those that one such piece likely makes wearable, and the share of the palette that is open in its colour, the whole palette counting as one picture. */
const worthOf = ({ completesLikely, paletteShare }: Gap): number => completesLikely + paletteShare;

const KIND_ORDER = ['piece', 'colour', 'slot'] as const satisfies readonly Gap['kind'][];

/** By what no photo of the clothes changes: what kind of gap it is, then what the board gives it. */
const byBoard = (a: Gap, b: Gap): number =>
	KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) ||
	b.shownIn - a.shownIn ||
	b.weight - a.weight ||
	b.missing - a.missing ||
	(a.id < b.id ? -1 : 1);

/** The gaps that stood in the season's list when they were last noted, in their order; none before that. */
export const gapsShownBefore = ({ lineUp }: SeasonInput): readonly string[] => lineUp?.gapIds ?? [];

/** Whether an owned garment that is not held could fill a gap: in season and stored, or on the rail, whole and of the palette: what was left out for its colour fills none. */
const isSpare = (garment: Garment, { season, palette }: SeasonInput): boolean =>
	isInSeason(garment, season) &&
	(garment.place === 'stored' ||
		(garment.place === 'rail' && garment.condition !== 'worn-out' && fitsPalette(garment, palette)));

/**
 * What is missing: tentative colours last, else by the pictures that one such piece likely makes wearable and the share of the palette that is open in its colour, then pieces
 * before colours before slots. Once they were noted they keep their order until one is worth clearly more: no new photo shuffles them.
 */
export function gapsOf(input: SeasonInput, facts: GapFacts, held = heldGarments(input)): Gap[] {
	const spare = input.garments.filter((garment) => !held.includes(garment) && isSpare(garment, input));
	const pieces = facts.wished.map(({ piece, outfitsAdded }) => pieceGap(piece, outfitsAdded, input, facts));
	const before = gapsShownBefore(input);
	const shown = new Set(before);
	const colours = facts.bands.asked
		.filter((asked) => isMissing(asked, shown))
		.flatMap((asked) => colourGap(asked, input, facts, { spare, held, pieces }) ?? []);
	const slots = SLOTS.map((slot) => ({ slot, count: held.filter(({ kind }) => slotOfKind(kind) === slot).length }))
		.filter(({ slot, count }) => count < input.season.quotas[slot] && (slot !== 'full' || wearsFull(input)))
		.map(({ slot, count }) => slotGap(slot, count, input, facts, spare));
	const gaps = [...pieces, ...colours, ...slots];
	return [false, true].flatMap((isTentative) =>
		steadyOrder(gaps.filter(({ tentative }) => tentative === isTentative).sort(byBoard), ({ id }) => id, worthOf, {
			before,
			step: WORTH_STEP,
		}),
	);
}
