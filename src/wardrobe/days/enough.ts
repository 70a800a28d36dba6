import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';
import { factsOfKind, type Kind, slotOfKind } from '../words/kind.ts';
import type { Occasion, SeasonDays } from '../words/season.ts';

type Worn = Pick<Garment, 'kind' | 'occasions'>;

/** Whether a garment serves an occasion: the user's own word for the garment first, else what its kind usually serves. */
export const servesOccasion = ({ kind, occasions }: Worn, { name, like }: Pick<Occasion, 'name' | 'like'>): boolean =>
	occasions && occasions.length > 0 ? occasions.includes(name) : !(factsOfKind(kind).notFor ?? []).includes(like);

/** Days that one garment lasts between two washes: its wears, but no more than the days there are. What is not washed lasts all of them. */
export function daysOf(kind: Kind, { wearsPerWash, washEveryDays }: SeasonDays): number {
	const wears = wearsPerWash[kind] ?? factsOfKind(kind).wears;
	return wears === 0 ? washEveryDays : Math.min(wears, washEveryDays);
}

/** What is worn as the top of a body: all tops but those that only go over another. */
export const isBodyTop = (kind: Kind): boolean =>
	slotOfKind(kind) === 'top' && kind !== 'cardigan' && kind !== 'waistcoat';

/** How an occasion stands between two washes. */
export type OccasionDays = { readonly name: string; readonly asked: number; readonly dressed: number };

/** How long clothes last between two washes. */
export type Enough = {
	/** Days between two washes that are asked for and that the clothes dress, all occasions together. */
	readonly askedDays: number;
	readonly dressedDays: number;
	/** Days that the tops, bottoms and full pieces last, whatever the occasion. */
	readonly topDays: number;
	readonly bottomDays: number;
	readonly fullDays: number;
	/** Each occasion by itself, as if the others could wait. */
	readonly occasions: readonly OccasionDays[];
	readonly sentence: string;
};

/** One part of a body and the days that one garment gives to it, by the occasions it serves (a bit each). */
export type PartOffer = { readonly part: 'top' | 'bottom' | 'full'; readonly serves: number; readonly days: number };

/** Days given, added up by part of a body and by the occasions served: a row a part, a column a set of occasions. */
export const PART_ROW = { top: 0, bottom: 1, full: 2 } as const;

/**
 * Days dressed between two washes, from days added up as {@link PART_ROW} says: the most that tops, bottoms and full pieces can give to the occasions asked for. By the tightest cut: some occasions are held up by their tops, some
 * by their bottoms, the rest by nothing but the days asked (maximum flow, minimum cut). All combinations of up to six occasions are looked at.
 */
export function dressedOf(given: Float64Array, asked: readonly number[]): number {
	const masks = 1 << asked.length;
	const lasting = (row: number, mask: number) => {
		let days = 0;
		for (let serves = 1; serves < masks; serves++) if ((serves & mask) !== 0) days += given[row * masks + serves]!;
		return days;
	};
	let least = Number.POSITIVE_INFINITY;
	for (let byTops = 0; byTops < masks; byTops++) {
		const rest = (masks - 1) & ~byTops;
		for (let byBottoms = rest; ; byBottoms = (byBottoms - 1) & rest) {
			const held = byTops | byBottoms;
			let days = lasting(PART_ROW.top, byTops) + lasting(PART_ROW.bottom, byBottoms) + lasting(PART_ROW.full, held);
			for (let one = 0; one < asked.length; one++) if (((held >> one) & 1) === 0) days += asked[one]!;
			if (days < least) least = days;
			if (byBottoms === 0) break;
		}
	}
	return least;
}

/** {@link dressedOf} of what garments offer; `null` is what is no part of a body. */
export function dressedDays(offers: readonly (PartOffer | null)[], asked: readonly number[]): number {
	const masks = 1 << asked.length;
	const given = new Float64Array(3 * masks);
	for (const offer of offers) if (offer) given[PART_ROW[offer.part] * masks + offer.serves]! += offer.days;
	return dressedOf(given, asked);
}

/** Occasions that are looked at together; more would take the tightest cut too long. */
const MOST_OCCASIONS = 6;

/** The occasions of a season that ask for a day, the frequent ones first; at most six. */
export const askedOccasions = ({ occasions }: SeasonDays): readonly Occasion[] =>
	occasions
		.filter(({ daysAWeek }) => daysAWeek > 0)
		.sort((a, b) => b.daysAWeek - a.daysAWeek || (a.name < b.name ? -1 : 1))
		.slice(0, MOST_OCCASIONS);

/** What one garment offers to a season's occasions, and to which part of a body; `null` for what is no part of one. */
export function offerOf(garment: Worn, days: SeasonDays): PartOffer | null {
	const slot = slotOfKind(garment.kind);
	if (slot !== 'bottom' && slot !== 'full' && !isBodyTop(garment.kind)) return null;
	const serves = askedOccasions(days).reduce(
		(mask, occasion, index) => (servesOccasion(garment, occasion) ? mask | (1 << index) : mask),
		0,
	);
	return { part: slot === 'bottom' || slot === 'full' ? slot : 'top', serves, days: daysOf(garment.kind, days) };
}

/** The days asked of each occasion between two washes. */
export const askedDays = (days: SeasonDays): number[] =>
	askedOccasions(days).map(({ daysAWeek }) => (days.washEveryDays * daysAWeek) / 7);

function enoughSentence({
	askedDays: asked,
	topDays,
	bottomDays,
	fullDays,
	dressedDays: dressed,
	occasions,
}: Omit<Enough, 'sentence'>): string {
	const daysText = (days: number) => say('counts.days', { count: Math.round(days) });
	const last = say(fullDays > 0 ? 'enough.last' : 'enough.lastParts', {
		asked: daysText(asked),
		tops: daysText(topDays),
		bottoms: daysText(bottomDays),
		full: daysText(fullDays),
	});
	const short = Math.round(asked - dressed);
	if (short <= 0) return say('enough.enough', { last });
	const worst = [...occasions].sort((a, b) => b.asked - b.dressed - (a.asked - a.dressed))[0];
	const isTold = worst && occasions.length > 1 && worst.asked - worst.dressed >= 0.5;
	return say('enough.short', {
		last,
		days: daysText(short),
		where: isTold ? say('enough.where', { occasion: worst.name }) : '',
		what: say(topDays <= bottomDays ? 'enough.top' : 'enough.bottom'),
	});
}

/** How long the garments last between two washes of a season, with a sentence; whatever else they go with. */
export function enoughOf(garments: readonly Worn[], days: SeasonDays): Enough {
	const offers = garments.flatMap((garment) => offerOf(garment, days) ?? []);
	const asked = askedDays(days);
	const alone = (index: number) =>
		dressedDays(
			offers,
			asked.map((one, at) => (at === index ? one : 0)),
		);
	const lasting = (part: PartOffer['part']) =>
		offers.reduce((sum, offer) => sum + (offer.part === part && offer.serves !== 0 ? offer.days : 0), 0);
	const told = {
		askedDays: asked.reduce((sum, one) => sum + one, 0),
		dressedDays: dressedDays(offers, asked),
		topDays: lasting('top'),
		bottomDays: lasting('bottom'),
		fullDays: lasting('full'),
		occasions: askedOccasions(days).map(({ name }, index) => ({ name, asked: asked[index]!, dressed: alone(index) })),
	};
	return { ...told, sentence: enoughSentence(told) };
}
