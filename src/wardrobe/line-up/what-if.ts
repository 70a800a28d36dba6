import { say } from '../../language/speak.ts';
import { coveredShareOf } from '../gaps/bands.ts';
import type { Gap } from '../gaps/gap.ts';
import { seasonGaps } from '../gaps/season-gaps.ts';
import { type OutfitRange, outfitsText, rangeOf, type Tally, tallyDifference } from '../pairs/outfit-range.ts';
import { wearableBoard } from '../pictures/wearable-pictures.ts';
import { wishedPieces } from '../pictures/wished-pieces.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';

/** A set tried out: what it makes and what it leaves open. */
type TriedSet = {
	readonly garmentIds: readonly string[];
	/** Outfits for the season's days. */
	readonly outfits: OutfitRange;
	/** How much of what the palette asks is covered, 0..1. */
	readonly coveredShare: number;
	readonly gaps: readonly Gap[];
};

/** A change to a set, without searching. */
export type WhatIf = {
	readonly before: TriedSet;
	readonly after: TriedSet;
	readonly outfitsChange: OutfitRange;
	readonly coveredChange: number;
	/** Gaps that the change fills, and gaps that it opens. */
	readonly filled: readonly Gap[];
	readonly opened: readonly Gap[];
	readonly sentence: string;
};

function triedSet(input: SeasonInput, ids: ReadonlySet<string>): { readonly set: TriedSet; readonly tally: Tally } {
	const held = input.garments.filter(({ id }) => ids.has(id)).sort((a, b) => (a.id < b.id ? -1 : 1));
	const { bands, gaps, outfits } = seasonGaps(
		input,
		held,
		wishedPieces(wearableBoard({ ...input, garments: held }), held),
	);
	const set = {
		garmentIds: held.map(({ id }) => id),
		outfits: rangeOf(outfits),
		coveredShare: coveredShareOf(bands),
		gaps,
	};
	return { set, tally: outfits };
}

/** A change to a set: what it makes afterwards, and the palette it covers before and after, 0..1. */
type SetChange = {
	readonly garmentCount: number;
	readonly outfits: OutfitRange;
	readonly outfitsChange: OutfitRange;
	readonly covered: { readonly before: number; readonly after: number };
};

/** A change to a set in one sentence; more or fewer outfits only where other photos would say so too. */
export function changeSentence({ garmentCount, outfits, outfitsChange, covered }: SetChange): string {
	const [from, to] = [Math.round(100 * covered.before), Math.round(100 * covered.after)];
	const way = outfitsChange.from > 0 ? 'more' : outfitsChange.to < 0 ? 'fewer' : 'same';
	const made = say(`whatIf.${way}`, {
		garments: say('counts.garments', { count: garmentCount }),
		outfits: outfitsText(outfits),
	});
	return `${made} ${say(from === to ? 'whatIf.coverSame' : 'whatIf.cover', { from, to })}`;
}

/** What a set would be after taking out `remove` and putting in `add`: outfits, cover of the palette and gaps. Unknown ids are left out. */
export function whatIf(
	input: SeasonInput,
	change: {
		readonly garmentIds: readonly string[];
		readonly remove: readonly string[];
		readonly add: readonly string[];
	},
): WhatIf {
	const removed = new Set(change.remove);
	const { set: before, tally } = triedSet(input, new Set(change.garmentIds));
	const kept = change.garmentIds.filter((id) => !removed.has(id));
	const { set: after, tally: tallyAfter } = triedSet(input, new Set([...kept, ...change.add]));
	const outfitsChange = rangeOf(tallyDifference(tallyAfter, tally));
	const shoes = new Set(input.garments.filter(({ kind }) => slotOfKind(kind) === 'shoes').map(({ id }) => id));
	const hasShoes = (ids: readonly string[]) => ids.some((id) => shoes.has(id));
	const without = (gaps: readonly Gap[], others: readonly Gap[]) =>
		gaps.filter(({ id }) => !others.some((other) => other.id === id));
	return {
		before,
		after,
		outfitsChange,
		coveredChange: after.coveredShare - before.coveredShare,
		filled: without(before.gaps, after.gaps),
		opened: without(after.gaps, before.gaps),
		sentence: [
			changeSentence({
				garmentCount: after.garmentIds.length,
				outfits: after.outfits,
				outfitsChange,
				covered: { before: before.coveredShare, after: after.coveredShare },
			}),
			hasShoes(after.garmentIds) || !hasShoes(before.garmentIds) ? '' : say('held.noShoes'),
		]
			.filter(Boolean)
			.join(' '),
	};
}
