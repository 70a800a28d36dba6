import { say } from '../../language/speak.ts';
import { bandsOf } from '../gaps/bands.ts';
import { type Gap, gapsOf } from '../gaps/gaps.ts';
import { missingPieces } from '../gaps/missing-piece.ts';
import { countOutfits } from '../pairs/outfits.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { pairTable } from '../pairs/pair-table.ts';
import type { SeasonInput } from '../words/season-input.ts';

/** A set tried out: what it makes and what it leaves open. */
type TriedSet = {
	readonly garmentIds: readonly string[];
	readonly outfits: number;
	/** How much of what the palette asks is covered, 0..1. */
	readonly coveredShare: number;
	readonly gaps: readonly Gap[];
};

/** A change to a set, without searching. */
export type WhatIf = {
	readonly before: TriedSet;
	readonly after: TriedSet;
	readonly outfitsChange: number;
	readonly coveredChange: number;
	/** Gaps that the change fills, and gaps that it opens. */
	readonly filled: readonly Gap[];
	readonly opened: readonly Gap[];
	readonly sentence: string;
};

function triedSet(input: SeasonInput, ids: ReadonlySet<string>): TriedSet {
	const held = input.garments.filter(({ id }) => ids.has(id)).sort((a, b) => (a.id < b.id ? -1 : 1));
	const context = pairContextOf(input);
	const table = pairTable(held, context);
	const bands = bandsOf(input.palette, held);
	return {
		garmentIds: held.map(({ id }) => id),
		outfits: countOutfits({ slots: table.slots, goes: table.supported }, held.keys()),
		coveredShare: bands.asked.reduce((sum, { covered }) => sum + covered, 0),
		gaps: gapsOf(input, bands, context.pairings, missingPieces(input, held), held),
	};
}

/** What a set is measured by when it changes. */
type MeasuredSet = { readonly garmentCount: number; readonly outfits: number; readonly coveredShare: number };

/** A change to a set in one sentence. */
export function changeSentence(before: MeasuredSet, after: MeasuredSet): string {
	const change = after.outfits - before.outfits;
	const from = Math.round(100 * before.coveredShare);
	const to = Math.round(100 * after.coveredShare);
	const made = say(change === 0 ? 'whatIf.same' : change > 0 ? 'whatIf.more' : 'whatIf.fewer', {
		garments: say('counts.garments', { count: after.garmentCount }),
		outfits: say('counts.outfits', { count: after.outfits }),
		change: Math.abs(change),
	});
	return `${made} ${say(from === to ? 'whatIf.coverSame' : 'whatIf.cover', { from, to })}`;
}

const measured = ({ garmentIds, ...rest }: TriedSet): MeasuredSet => ({ ...rest, garmentCount: garmentIds.length });

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
	const before = triedSet(input, new Set(change.garmentIds));
	const after = triedSet(input, new Set([...change.garmentIds.filter((id) => !removed.has(id)), ...change.add]));
	const without = (gaps: readonly Gap[], others: readonly Gap[]) =>
		gaps.filter(({ id }) => !others.some((other) => other.id === id));
	return {
		before,
		after,
		outfitsChange: after.outfits - before.outfits,
		coveredChange: after.coveredShare - before.coveredShare,
		filled: without(before.gaps, after.gaps),
		opened: without(after.gaps, before.gaps),
		sentence: changeSentence(measured(before), measured(after)),
	};
}
