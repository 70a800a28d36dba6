import { say } from '../../language/speak.ts';

/** A number as read, then as each imagined re-read of the photos has it; of the same re-reads wherever two are compared. */
export type Tally = readonly [asRead: number, ...reread: number[]];

/** A number with what other photos of the same clothes would make of it in eight cases of ten; `from` and `to` in steps that a person can tell apart. */
export type OutfitRange = { readonly likely: number; readonly from: number; readonly to: number };

/** Share of the re-reads left out at either end. */
const LEFT_OUT = 0.1;

/** Steps of a decade: a fifth to a half apart, since a re-read moves counts by a fifth and more (`bench/stability.ts`). */
const STEPS = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10] as const;
/** Up to here every whole number is a step. */
const COUNTED_EXACTLY = 10;

/** The step below or above a number of either sign. */
function stepped(value: number, up: boolean): number {
	if (value < 0) return 0 - stepped(-value, !up);
	if (value <= COUNTED_EXACTLY) return up ? Math.max(0, Math.ceil(value - 1e-9)) : Math.floor(value + 1e-9);
	const decade = 10 ** Math.floor(Math.log10(value) + 1e-9);
	const steps = STEPS.map((step) => step * decade);
	return up ? steps.find((step) => step >= value - 1e-9)! : Math.max(...steps.filter((step) => step <= value + 1e-9));
}

/** The range of a tally. */
export function rangeOf(tally: Tally): OutfitRange {
	const [likely] = tally;
	const sorted = tally.slice(1).sort((a, b) => a - b);
	const out = Math.floor(LEFT_OUT * sorted.length);
	const low = Math.min(likely, sorted[out] ?? likely);
	const high = Math.max(likely, sorted[sorted.length - 1 - out] ?? likely);
	return { likely: Math.round(likely) + 0, from: stepped(low, false), to: stepped(high, true) };
}

/** Re-read by re-read, of those that both have. */
const pointwise = (one: Tally, other: Tally, of: (a: number, b: number) => number): Tally => [
	of(one[0], other[0]),
	...one.slice(1, other.length).map((value, index) => of(value, other[index + 1]!)),
];

/** How far one tally lies above another, re-read by re-read. */
export const tallyDifference = (one: Tally, other: Tally): Tally => pointwise(one, other, (a, b) => a - b);

export const tallySum = (one: Tally, other: Tally): Tally => pointwise(one, other, (a, b) => a + b);

/** Beyond this nobody wears them all: only that there are more is said. */
const ENOUGH = 1000;

/** A range in words: "3 outfits", "about 40 outfits", "30 to 60 outfits". */
export function outfitsText({ from, to }: OutfitRange): string {
	if (from >= ENOUGH) return say('counts.outfitsMany', { from: ENOUGH });
	if (from !== to) return say('counts.outfitsRange', { from, to });
	return from <= COUNTED_EXACTLY ? say('counts.outfits', { count: from }) : say('counts.outfitsAbout', { about: from });
}
