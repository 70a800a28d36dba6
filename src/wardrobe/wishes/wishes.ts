import { listText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import { missingPart } from '../gaps/colour-gap.ts';
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
	/** Its place among the open wishes, 1 = look for it first. */
	readonly place: number;
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

/** What a wish's note says of the gap that it came from: words alone, since figures change and the note stays. */
function noteOf({ kind, pieceKind }: Gap): string {
	if (kind === 'piece') return say('wishes.fromPictures');
	return kind === 'colour' && pieceKind ? say('wishes.wornAs', { piece: say(`kinds.${pieceKind}`) }) : '';
}

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
		notes: noteOf(gap),
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

const ANSWERS = { all: 'wishes.answersAll', most: 'wishes.answersMost', some: 'wishes.answersSome' } as const;

/** So many reasons are told of a wish's place; more would bury them. */
const MOST_REASONS = 2;

const REASONS = {
	pictures: 'wishes.becausePictures',
	outfits: 'wishes.becauseOutfits',
	palette: 'wishes.becausePalette',
	waiting: 'wishes.becauseWaiting',
	seasons: 'wishes.becauseSeasons',
	price: 'wishes.becausePrice',
} as const satisfies Record<PriorityPart, string>;

/** What speaks for a wish, the weightiest first; what is the same for every wish of one season, was never told, or costs more than half of the dearest, is no reason. */
function reasonsFor(parts: WishStanding['parts'], { yearParts, priceLimit }: Wish): string[] {
	const isReason: Readonly<Record<PriorityPart, boolean>> = {
		pictures: true,
		outfits: true,
		palette: true,
		waiting: true,
		seasons: yearParts.length > 1,
		price: priceLimit !== null && parts.price >= WEIGHTS.price / 2,
	};
	return PRIORITY_PARTS.filter((part) => isReason[part] && parts[part] > 0)
		.sort((a, b) => parts[b] - parts[a])
		.slice(0, MOST_REASONS)
		.map((part) => say(REASONS[part]));
}

/** Wishes that are about as worthwhile as one, and whether one of them has waited just as long. */
type Tied = { readonly tied: number; readonly isAlike: boolean };

/** Where a wish stands among the open ones, and why; an only wish stands nowhere. */
function placeSentence(place: number, count: number, { tied, isAlike }: Tied, reasons: readonly string[]): string {
	if (count === 1) return '';
	const words = { place, count, reasons: reasons.join(say('wishes.andReason')) };
	const because = reasons.length > 0;
	return [
		place === 1
			? say(because ? 'wishes.firstBecause' : 'wishes.first', words)
			: say(because ? 'wishes.laterBecause' : 'wishes.later', words),
		tied > 0 ? say(isAlike ? 'wishes.tiedAlike' : 'wishes.tied', { count: tied }) : '',
	]
		.filter(Boolean)
		.join(' ');
}

function waitSentence(wantedDays: number, newInDays: number, waitingDays: number): string {
	if (waitingDays === 0) return say('wishes.openAtOnce');
	if (newInDays > 0) return say('wishes.wait', { days: say('counts.inDays', { count: newInDays }) });
	return say('wishes.open', { days: say('counts.forDays', { count: wantedDays }) });
}

/** Priorities that differ by less change places when the clothes are photographed again: measured over re-reads of six made-up homes, see `bench/stability.ts`. */
const PRIORITY_STEP = 15;

/** A standing before the wishes are put in order; its sentence says nothing of the order yet. */
type Unplaced = Omit<WishStanding, 'place'>;

/** Points that no photo changes. */
const toldPoints = ({ parts }: Unplaced): number => parts.seasons + parts.price;

/**
 * The most urgent first, each told its place. Of those whose points other photos could reorder: the one that has waited longest, then by the points that no
 * photo changes, then by name.
 */
function inOrder(standings: readonly Unplaced[], wishes: ReadonlyMap<string, Wish>): WishStanding[] {
	const text = ({ wishId }: Unplaced) => `${wishes.get(wishId)?.name} ${wishId}`;
	const placed = tiedGroups(standings, ({ priority }) => priority, PRIORITY_STEP).flatMap((group) =>
		[...group]
			.sort((a, b) => b.wantedDays - a.wantedDays || toldPoints(b) - toldPoints(a) || (text(a) < text(b) ? -1 : 1))
			.map((standing) => ({
				...standing,
				tied: group.length - 1,
				isAlike: group.some((other) => other !== standing && other.wantedDays === standing.wantedDays),
			})),
	);
	return placed.map(({ tied, isAlike, ...standing }, index) => {
		const reasons = reasonsFor(standing.parts, wishes.get(standing.wishId)!);
		const place = placeSentence(index + 1, placed.length, { tied, isAlike }, reasons);
		return { ...standing, place: index + 1, sentence: [place, standing.sentence].filter(Boolean).join(' ') };
	});
}

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
	const standings = open.map((wish): Unplaced => {
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
				completes > 0 ? say('wishedPieces.completes', { count: completes }) : '',
				outfitsAdded.to > 0 ? say('wishes.adds', { outfits: outfitsText(outfitsAdded) }) : '',
				// Among several wishes this is a reason for its place.
				coverage > 0 && open.length === 1 ? say(ANSWERS[missingPart(coverage)]) : '',
				wish.yearParts.length > 1
					? say('wishes.serves', { parts: listText(wish.yearParts.map((part) => say(`yearParts.${part}`))) })
					: '',
				stored ? say('wishes.stored', { name: stored.name }) : '',
				waitSentence(wantedDays, newInDays, input.season.waitingDays),
			]
				.filter(Boolean)
				.join(' '),
		};
	});
	return inOrder(standings, new Map(open.map((wish) => [wish.id, wish])));
}
