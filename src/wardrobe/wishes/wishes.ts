import { say } from '../../language/speak.ts';
import type { Gap } from '../gaps/gap.ts';
import { type OutfitRange, outfitsText, rangeOf, type Tally } from '../pairs/outfit-range.ts';
import { reachOf } from '../palette/palette-reach.ts';
import { daysBetween } from '../words/days-between.ts';
import { slotOfKind } from '../words/kind.ts';
import { colourWord } from '../words/palette-colour.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { tiedGroups } from '../words/tied-groups.ts';
import { type Maker, USUAL_TOLERANCE, type Wish } from '../words/wish.ts';

/** What a wish's priority is made of. */
const PRIORITY_PARTS = ['pictures', 'outfits', 'palette', 'waiting', 'seasons', 'price'] as const;
export type PriorityPart = (typeof PRIORITY_PARTS)[number];

/** A wish with its place in the list and whether new is allowed. */
export type WishStanding = {
	readonly wishId: string;
	/** 0..100, the sum of its parts; higher = sooner. */
	readonly priority: number;
	/** Points of each part of the priority. */
	readonly parts: Readonly<Record<PriorityPart, number>>;
	/** Pictures that such a piece would make wearable. */
	readonly completes: number;
	/** Outfits for the season's days. */
	readonly outfitsAdded: OutfitRange;
	readonly wantedDays: number;
	/** Days until new is allowed; 0 = now. */
	readonly newInDays: number;
	/** Makers the user trusts, once new is allowed. */
	readonly makers: readonly Maker[];
	/** A stored garment that could fill it at no cost; null where there is none. */
	readonly storedFirst: string | null;
	readonly sentence: string;
};

/** Farther apart two colours are no longer one colour of a palette. */
const MOST_TOLERANCE = 20;

/** A wish that fills the gap. */
export function wishFromGap(gap: Gap, input: SeasonInput, made: { readonly id: string; readonly today: string }): Wish {
	const colour = input.palette.colours.find(({ id }) => id === gap.paletteColourId) ?? null;
	const isPiece = gap.kind === 'piece';
	return {
		id: made.id,
		seasonId: input.season.id,
		name:
			gap.name ??
			(colour
				? say('wishes.inColour', { colour: colourWord(colour), piece: say(`pieces.${gap.slot}`) })
				: say(`pieces.${gap.slot}`)),
		slot: gap.slot,
		kind: isPiece ? gap.pieceKind : null,
		target: isPiece ? gap.lab : (colour?.lab ?? null),
		tolerance: isPiece
			? Math.min(MOST_TOLERANCE, Math.max(USUAL_TOLERANCE, Math.round(gap.spread)))
			: colour
				? reachOf(colour)
				: USUAL_TOLERANCE,
		yearParts: [input.season.yearPart],
		priceLimit: null,
		expectedWearsPerYear: null,
		wantedSince: made.today,
		state: 'open',
		paletteColourId: gap.paletteColourId,
		notes: gap.sentence,
	};
}

/** Weights of a wish's priority, 100 in all. Common practice, no source. */
const WEIGHTS: Readonly<Record<PriorityPart, number>> = {
	pictures: 35,
	outfits: 5,
	palette: 10,
	waiting: 40,
	seasons: 5,
	price: 5,
};
/** A wish that has waited so long has waited as long as can count. */
const LONGEST_WAIT_DAYS = 365;
/** Where no price limit is told, a wish is taken to be neither cheap nor dear. */
const UNTOLD_PRICE_SHARE = 0.5;

/** The gap that a wish would fill: its palette colour's, or that of its slot. */
const gapOf = (wish: Wish, gaps: readonly Gap[]): Gap | undefined =>
	gaps.find(({ kind, paletteColourId }) => kind === 'colour' && paletteColourId === wish.paletteColourId) ??
	gaps.find(
		({ kind, slot, paletteColourId }) =>
			kind === 'piece' && slot === wish.slot && paletteColourId !== null && paletteColourId === wish.paletteColourId,
	) ??
	gaps.find(({ kind, slot }) => kind === 'slot' && slot === wish.slot);

/** So many pictures made wearable, and so large a share of the palette covered, count in full. Common practice, no source. */
const MANY_PICTURES = 6;
const LARGE_SHARE = 0.2;

const PART_KEYS = {
	pictures: 'wishes.partPictures',
	outfits: 'wishes.partOutfits',
	palette: 'wishes.partPalette',
	waiting: 'wishes.partWaiting',
	seasons: 'wishes.partSeasons',
	price: 'wishes.partPrice',
} as const satisfies Record<PriorityPart, string>;

/** The parts that a priority is the sum of, the weightiest first. */
function prioritySentence(sum: number, parts: WishStanding['parts']): string {
	const told = PRIORITY_PARTS.filter((part) => parts[part] > 0)
		.sort((a, b) => parts[b] - parts[a])
		.map((part) => say(PART_KEYS[part], { points: parts[part] }));
	return say('wishes.priority', { sum, parts: told.join(', ') });
}

function waitSentence(wantedDays: number, newInDays: number): string {
	if (newInDays > 0) return say('wishes.wait', { days: say('counts.days', { count: newInDays }) });
	return say('wishes.open', { days: say('counts.days', { count: wantedDays }) });
}

/** Priorities that differ by less change places when the clothes are photographed again: measured over re-reads of six made-up homes, see `bench/stability.ts`. */
const PRIORITY_STEP = 15;

/** Points that no photo changes. */
const toldPoints = ({ parts }: WishStanding): number => parts.seasons + parts.price;

/**
 * The most urgent first. Of those whose points other photos could reorder: the one that has waited longest, then by the points that no photo changes, then by name.
 */
const inOrder = (standings: readonly WishStanding[], names: ReadonlyMap<string, string>): WishStanding[] =>
	tiedGroups(standings, ({ priority }) => priority, PRIORITY_STEP).flatMap((group) => {
		const others = group.length - 1;
		const text = ({ wishId }: WishStanding) => `${names.get(wishId)} ${wishId}`;
		return [...group]
			.sort((a, b) => b.wantedDays - a.wantedDays || toldPoints(b) - toldPoints(a) || (text(a) < text(b) ? -1 : 1))
			.map((standing) =>
				others === 0
					? standing
					: { ...standing, sentence: `${standing.sentence} ${say('wishes.tied', { count: others })}` },
			);
	});

/** Ranks the open wishes and says of each how long it has been wanted and whether new is allowed yet. */
export function wishStandings(
	input: SeasonInput,
	gaps: readonly Gap[],
	gainOf: (wish: Wish) => { readonly outfits: Tally; readonly pictures: number; readonly likely: number },
): WishStanding[] {
	const open = input.wishes.filter(({ state }) => state === 'open');
	const gains = new Map(open.map((wish) => [wish.id, gainOf(wish)]));
	const most = Math.max(1, ...[...gains.values()].map(({ outfits }) => outfits[0]));
	const dearest = Math.max(0, ...open.map(({ priceLimit }) => priceLimit ?? 0));
	const cheapness = ({ priceLimit }: Wish) =>
		priceLimit === null ? UNTOLD_PRICE_SHARE : dearest === 0 ? 1 : 1 - priceLimit / dearest;
	const standings = open.map((wish): WishStanding => {
		const { outfits, pictures: completes, likely } = gains.get(wish.id)!;
		const outfitsAdded = rangeOf(outfits);
		const gap = gapOf(wish, gaps);
		const coverage = gap?.kind === 'colour' ? gap.missing : 0;
		const wantedDays = Math.max(0, daysBetween(wish.wantedSince, input.today));
		const shares: Readonly<Record<PriorityPart, number>> = {
			pictures: Math.min(1, likely / MANY_PICTURES),
			outfits: outfits[0] / most,
			palette: Math.min(1, (gap?.paletteShare ?? 0) / LARGE_SHARE),
			waiting: Math.min(1, wantedDays / LONGEST_WAIT_DAYS),
			seasons: Math.min(4, wish.yearParts.length) / 4,
			price: cheapness(wish),
		};
		const parts = Object.fromEntries(
			PRIORITY_PARTS.map((part) => [part, Math.round(WEIGHTS[part] * shares[part])]),
		) as Record<PriorityPart, number>;
		const priority = PRIORITY_PARTS.reduce((sum, part) => sum + parts[part], 0);
		const newInDays = Math.max(0, input.season.waitingDays - wantedDays);
		const stored = input.garments.find(({ id, kind }) => id === gap?.storedFirst && slotOfKind(kind) === wish.slot);
		return {
			wishId: wish.id,
			priority,
			parts,
			completes,
			outfitsAdded,
			wantedDays,
			newInDays,
			makers: newInDays === 0 ? input.makers : [],
			storedFirst: stored?.id ?? null,
			sentence: [
				completes > 0 ? say('wishes.completes', { pictures: say('counts.pictures', { count: completes }) }) : '',
				outfitsAdded.to > 0 ? say('wishes.adds', { outfits: outfitsText(outfitsAdded) }) : '',
				coverage > 0 ? say('wishes.answersGap', { percent: Math.round(100 * coverage) }) : '',
				wish.yearParts.length > 1
					? say('wishes.serves', {
							parts: wish.yearParts.map((part) => say(`yearParts.${part}`)).join(say('inSeason.and')),
						})
					: '',
				stored ? say('wishes.stored', { name: stored.name }) : '',
				prioritySentence(priority, parts),
				waitSentence(wantedDays, newInDays),
			]
				.filter(Boolean)
				.join(' '),
		};
	});
	return inOrder(standings, new Map(open.map(({ id, name }) => [id, name])));
}
