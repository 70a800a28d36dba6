import { isBodyTop } from '../days/enough.ts';
import { isInSeason } from '../days/in-season.ts';
import { cloOf, UNDERWEAR_CLO } from '../days/insulation.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { indoorRange } from '../days/warmth-need.ts';
import type { Garment } from '../words/garment.ts';
import { factsOfKind, type Kind, slotOfKind } from '../words/kind.ts';
import type { Season } from '../words/season.ts';

/**
 * What outfits are made from. An outfit is a top and a bottom, or a full piece, with shoes; a jumper, cardigan or waistcoat may go over a top
 * that is not one itself, a cardigan over a full piece; all of it without or with one of the outer pieces. Every pair of its parts goes together, every part is in season, and what is
 * worn without the coat is neither too warm nor too cold for the season's days. Where nobody owns shoes, outfits are counted without them.
 */
export type OutfitTable = {
	readonly kinds: readonly Kind[];
	/** Whether the piece is for this part of the year. */
	readonly inSeason: readonly boolean[];
	/** Insulation of each piece, clo. */
	readonly clo: readonly number[];
	/** What is worn indoors must come to, clo. */
	readonly warmth: { readonly least: number; readonly most: number };
	readonly goes: (one: number, other: number) => boolean;
};

/** What outfits need to know of a season. */
export type SeasonOfOutfits = Pick<Season, 'yearPart' | 'startsOn' | 'endsOn' | 'days'>;

/** The table of these garments in a season; `goes` says which pairs go together. */
export const outfitTable = (
	garments: readonly Garment[],
	goes: OutfitTable['goes'],
	season: SeasonOfOutfits,
): OutfitTable => ({
	kinds: garments.map(({ kind }) => kind),
	inSeason: garments.map((garment) => isInSeason(garment, season)),
	clo: garments.map(cloOf),
	warmth: indoorRange(daysOfSeason(season)),
	goes,
});

/** Outfits of one make: a piece from each of `lists`, then none or one of `coats`; only ones with a coat where `bare` is false. */
export type OutfitShape = {
	readonly lists: readonly (readonly number[])[];
	/** How many of the lists are the body: what is worn without shoes and coat. */
	readonly body: number;
	readonly coats: readonly number[];
	readonly bare: boolean;
};

/** All makes of outfits that the members allow. */
export function outfitShapes({ kinds, inSeason }: OutfitTable, members: Iterable<number>): OutfitShape[] {
	const worn = [...members].filter((member) => inSeason[member]);
	const of = (holds: (kind: Kind) => boolean) => worn.filter((member) => holds(kinds[member]!));
	const tops = of(isBodyTop);
	const under = of((kind) => slotOfKind(kind) === 'top' && !factsOfKind(kind).over);
	const over = of((kind) => factsOfKind(kind).over ?? false);
	const bottoms = of((kind) => slotOfKind(kind) === 'bottom');
	const shoes = of((kind) => slotOfKind(kind) === 'shoes');
	const coats = of((kind) => slotOfKind(kind) === 'outer');
	const full = of((kind) => slotOfKind(kind) === 'full');
	const overFull = of((kind) => factsOfKind(kind).overFull ?? false);
	return [[tops, bottoms], [under, over, bottoms], [full], [full, overFull]]
		.filter((body) => body.every((list) => list.length > 0))
		.map((body) => ({ lists: shoes.length > 0 ? [...body, shoes] : body, body: body.length, coats, bare: true }));
}

/** Only those outfits of the shapes that wear the piece. */
export const shapesWith = (shapes: readonly OutfitShape[], piece: number): OutfitShape[] =>
	shapes.flatMap((shape) => [
		...shape.lists.flatMap((list, at) =>
			list.includes(piece)
				? [{ ...shape, lists: shape.lists.map((one, place) => (place === at ? [piece] : one)) }]
				: [],
		),
		...(shape.coats.includes(piece) ? [{ ...shape, coats: [piece], bare: false }] : []),
	]);

/** Whether clothes of so many clo suit the season's days indoors; underwear is counted in. */
export const suitsDays = ({ warmth }: OutfitTable, clo: number): boolean =>
	clo + UNDERWEAR_CLO >= warmth.least && clo + UNDERWEAR_CLO <= warmth.most;

/**
 * Calls `visit` with every outfit of a shape, its pieces in the order body, shoes, outer, in one array that is used again: copy what is to be kept. `goesOn` may
 * rule out all outfits that begin with some pieces: it is asked of each body, and of each body with its shoes before outer pieces are tried.
 */
export function eachOutfitOf(
	table: OutfitTable,
	{ lists, body, coats, bare }: OutfitShape,
	visit: (pieces: readonly number[]) => void,
	goesOn: (pieces: readonly number[]) => boolean = () => true,
): void {
	const { goes, clo } = table;
	const pieces: number[] = [];
	const goesWithAll = (piece: number): boolean => {
		for (let at = 0; at < pieces.length; at++) if (!goes(pieces[at]!, piece)) return false;
		return true;
	};
	const extend = (warmth: number): void => {
		const isWhole = pieces.length === lists.length;
		if (isWhole && !suitsDays(table, warmth)) return;
		if (isWhole && bare) visit(pieces);
		if (pieces.length >= body && !goesOn(pieces)) return;
		for (const piece of isWhole ? coats : lists[pieces.length]!) {
			if (!goesWithAll(piece)) continue;
			pieces.push(piece);
			if (isWhole) visit(pieces);
			else extend(warmth + clo[piece]!);
			pieces.pop();
		}
	};
	extend(0);
}

/** Every outfit that the members make, as {@link eachOutfitOf} tells them. */
export function eachOutfit(
	table: OutfitTable,
	members: Iterable<number>,
	visit: (pieces: readonly number[]) => void,
	goesOn?: (pieces: readonly number[]) => boolean,
): void {
	for (const shape of outfitShapes(table, members)) eachOutfitOf(table, shape, visit, goesOn);
}
