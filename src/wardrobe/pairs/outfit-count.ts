import { seededRandom } from '../words/seeded-random.ts';
import { eachOutfitOf, type OutfitShape, type OutfitTable, suitsDays } from './outfits.ts';

/** So many combinations of pieces are looked at one by one; of more a sample is drawn. */
const LOOKED_AT_MOST = 10_000;

/** Combinations drawn where there are too many. A tenth of them being outfits, the count is then known to about 5 % (binomial standard deviation). */
const DRAWN = 4_000;

const combinationsOf = ({ lists, coats, bare }: OutfitShape): number =>
	lists.reduce((product, list) => product * list.length, coats.length + (bare ? 1 : 0));

function weightOf(pieces: readonly number[], weights: ArrayLike<number>): number {
	let weight = 1;
	for (const piece of pieces) weight *= weights[piece]!;
	return weight;
}

function countedOneByOne(table: OutfitTable, shape: OutfitShape, weights: ArrayLike<number>): number {
	let sum = 0;
	eachOutfitOf(table, shape, (pieces) => {
		sum += weightOf(pieces, weights);
	});
	return sum;
}

/** The weight of a combination if it is an outfit, else 0. `indoors`: how many of its pieces are worn under the coat. */
function weightIfOutfit(
	table: OutfitTable,
	pieces: readonly number[],
	indoors: number,
	weights: ArrayLike<number>,
): number {
	let clo = 0;
	for (let at = 0; at < pieces.length; at++) {
		for (let before = 0; before < at; before++) if (!table.goes(pieces[before]!, pieces[at]!)) return 0;
		if (at < indoors) clo += table.clo[pieces[at]!]!;
	}
	return suitsDays(table, clo) ? weightOf(pieces, weights) : 0;
}

function countedFromSample(
	table: OutfitTable,
	shape: OutfitShape,
	drawn: number,
	weights: ArrayLike<number>,
	random: () => number,
): number {
	const { lists, coats, bare } = shape;
	let sum = 0;
	for (let draw = 0; draw < drawn; draw++) {
		const pieces = lists.map((list) => list[Math.floor(random() * list.length)]!);
		const coat = Math.floor(random() * (coats.length + (bare ? 1 : 0)));
		if (coat < coats.length) pieces.push(coats[coat]!);
		sum += weightIfOutfit(table, pieces, lists.length, weights);
	}
	return (sum / drawn) * combinationsOf(shape);
}

/**
 * The outfits of all shapes, each counting the product of its pieces' weights. Exact up to 10,000 combinations of pieces; beyond, estimated from 4,000 that are
 * drawn, always the same ones for the same shapes.
 */
export function countOutfits(
	table: OutfitTable,
	shapes: readonly OutfitShape[],
	weights: ArrayLike<number> = table.kinds.map(() => 1),
): number {
	const all = shapes.reduce((sum, shape) => sum + combinationsOf(shape), 0);
	if (all <= LOOKED_AT_MOST) return shapes.reduce((sum, shape) => sum + countedOneByOne(table, shape, weights), 0);
	const random = seededRandom('outfits');
	return shapes.reduce((sum, shape) => {
		const drawn = Math.ceil((DRAWN * combinationsOf(shape)) / all);
		return drawn === 0 ? sum : sum + countedFromSample(table, shape, drawn, weights, random);
	}, 0);
}
