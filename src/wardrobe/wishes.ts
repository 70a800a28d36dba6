import { colourWord } from './fit-sentence.ts';
import type { Gap } from './gaps.ts';
import { daysBetween } from './look-back.ts';
import type { SeasonInput } from './season-input.ts';
import type { Maker, Wish } from './wish.ts';

/** A wish with its place in the list and whether new is allowed. */
export type WishStanding = {
	readonly wishId: string;
	/** 0..100 out of outfits added, coverage and price; higher = sooner. */
	readonly priority: number;
	readonly outfitsAdded: number;
	readonly wantedDays: number;
	/** Days until new is allowed; 0 = now. */
	readonly newInDays: number;
	/** Makers the user trusts, once new is allowed. */
	readonly makers: readonly Maker[];
	readonly sentence: string;
};

/** Colours within this of the target answer a wish; an uncalibrated photo cannot say finer. */
const USUAL_TOLERANCE = 8;

/** A wish that fills the gap. */
export function wishFromGap(gap: Gap, input: SeasonInput, made: { readonly id: string; readonly today: string }): Wish {
	const colour = input.palette.colours.find(({ id }) => id === gap.paletteColourId) ?? null;
	return {
		id: made.id,
		seasonId: input.season.id,
		name: colour ? `${gap.slot} in ${colourWord(colour)}` : gap.slot,
		slot: gap.slot,
		kind: null,
		target: colour?.lab ?? null,
		tolerance: colour ? Math.max(USUAL_TOLERANCE, colour.spread) : USUAL_TOLERANCE,
		yearParts: [input.season.yearPart],
		priceLimit: null,
		expectedWearsPerYear: null,
		wantedSince: made.today,
		state: 'open',
		paletteColourId: gap.paletteColourId,
		notes: gap.sentence,
	};
}

/** Weights of a wish's priority. Common practice, no source. */
const OUTFITS_WEIGHT = 60;
const COVERAGE_WEIGHT = 30;
const SEASONS_WEIGHT = 10;

/** Ranks the open wishes and says of each how long it has been wanted and whether new is allowed yet. */
export function wishStandings(
	input: SeasonInput,
	gaps: readonly Gap[],
	outfitsAddedOf: (wish: Wish) => number,
): WishStanding[] {
	const open = input.wishes.filter(({ state }) => state === 'open');
	const added = new Map(open.map((wish) => [wish.id, outfitsAddedOf(wish)]));
	const most = Math.max(1, ...added.values());
	return open
		.map((wish): WishStanding => {
			const outfitsAdded = added.get(wish.id)!;
			const gap = gaps.find(
				({ kind, paletteColourId }) => kind === 'colour' && paletteColourId === wish.paletteColourId,
			);
			const coverage = gap ? gap.missing : 0;
			const priority = Math.round(
				(OUTFITS_WEIGHT * outfitsAdded) / most +
					COVERAGE_WEIGHT * coverage +
					(SEASONS_WEIGHT * Math.min(4, wish.yearParts.length)) / 4,
			);
			const wantedDays = Math.max(0, daysBetween(wish.wantedSince, input.today));
			const newInDays = Math.max(0, input.season.waitingDays - wantedDays);
			const wait =
				newInDays > 0
					? `Look for it used; in ${newInDays} days, if you still want it, new from makers you trust is open.`
					: 'You have wanted it longer than your waiting time: it is a real wish. Used first, then new from makers you trust.';
			return {
				wishId: wish.id,
				priority,
				outfitsAdded,
				wantedDays,
				newInDays,
				makers: newInDays === 0 ? input.makers : [],
				sentence: `Wanted for ${wantedDays} days; it would add ${outfitsAdded} outfits. ${wait}`,
			};
		})
		.sort((a, b) => b.priority - a.priority || (a.wishId < b.wishId ? -1 : 1));
}
