import { isInSeason } from '../days/in-season.ts';
import { toldCompletions } from '../pictures/completing.ts';
import { slotOfKind } from '../words/kind.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { SLOTS } from '../words/slot.ts';
import { tiedGroups } from '../words/tied-groups.ts';
import { colourGap, isMissing } from './colour-gap.ts';
import type { Gap } from './gap.ts';
import type { GapFacts } from './gap-facts.ts';
import { pieceGap } from './piece-gap.ts';
import { slotGap } from './slot-gap.ts';

/** Pictures, and shares of the palette, that differ by less change places when the clothes are photographed again, see `bench/stability.ts`. */
const PICTURES_STEP = 0.5;
const SHARE_STEP = 0.05;

const KIND_ORDER = ['piece', 'colour', 'slot'] as const satisfies readonly Gap['kind'][];

/** By what no photo of the clothes changes: what kind of gap it is, then what the board gives it. */
const byBoard = (a: Gap, b: Gap): number =>
	KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) ||
	b.shownIn - a.shownIn ||
	b.weight - a.weight ||
	b.missing - a.missing ||
	(a.id < b.id ? -1 : 1);

/** By the pictures that such a piece likely makes wearable, then by the share of the palette; what photos cannot tell apart by the board. */
const byWorth = (gaps: readonly Gap[]): Gap[] =>
	tiedGroups(gaps, ({ completesLikely }) => completesLikely, PICTURES_STEP).flatMap((completing) =>
		tiedGroups(completing, ({ paletteShare }) => paletteShare, SHARE_STEP).flatMap((tied) => [...tied].sort(byBoard)),
	);

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
	const gaps = [...pieces, ...colours, ...slots];
	const mayComplete = ({ completesLikely }: Gap) => toldCompletions(completesLikely) > 0;
	return [false, true].flatMap((isTentative) => {
		const own = gaps.filter(({ tentative }) => tentative === isTentative);
		return [...byWorth(own.filter(mayComplete)), ...byWorth(own.filter((gap) => !mayComplete(gap)))];
	});
}
