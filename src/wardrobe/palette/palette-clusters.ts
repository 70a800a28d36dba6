import { deltaE2000Matrix, liesWithin, packLabs } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { completeLinkage, groupsAfter, groupsWithin } from '../../colour/linkage.ts';
import { SAME_SIDE_BY_SIDE, SAME_WORN } from '../../colour/same-colour.ts';
import { meanOf, medoidOf, spreadAround, weightOf } from './palette-centre.ts';
import { type PoolPoint, splitNeutrals } from './palette-pool.ts';

/** A colour found in the pool, before it is named and given its role. */
export type PaletteCluster = {
	readonly lab: Lab65;
	/** Summed weight of its points; a photo's points sum to 1. */
	readonly weight: number;
	/** Weighted median CIEDE2000 of its points to the centre. */
	readonly spread: number;
	readonly neutral: boolean;
	readonly points: readonly PoolPoint[];
};

/** How many neutral and coloured ones are asked for; `null` = as many as the board holds. */
export type PaletteCounts = { readonly base: number | null; readonly coloured: number | null };

/** No two points of one colour lie further apart (CIEDE2000; measured on six boards against counts by eye, and on twenty for cover and steadiness). */
export const COLOUR_WIDTH = 20;

/** A group is a colour of the board from this share of its cloth on, or from half of it where two pictures wear it (same boards). */
const KEPT_FROM_SHARE = 0.03;
const KEPT_FROM_SHARE_IN_TWO = 0.015;

/** A board with more points is thinned first: those that the eye cannot tell from a heavier one are taken for it. */
const MOST_POINTS = 900;

/** Points of large boards in groups of nearly one colour, each group standing for all its points; small boards as they are. */
function thinned(points: readonly PoolPoint[]): PoolPoint[][] {
	if (points.length <= MOST_POINTS) return points.map((point) => [point]);
	const groups: PoolPoint[][] = [];
	for (const point of points) {
		const near = groups.find(([first]) => liesWithin(first!.lab, point.lab, SAME_SIDE_BY_SIDE));
		if (near) near.push(point);
		else groups.push([point]);
	}
	return groups;
}

function clusterOf(points: readonly PoolPoint[], neutral: boolean): PaletteCluster {
	const mean = meanOf(points);
	// The mean of rust and honey is an orange that nobody wears: where no point has its colour, the points' own middle takes its place.
	const held = points.some(({ lab }) => liesWithin(lab, mean, SAME_WORN));
	const lab = held ? mean : medoidOf(points);
	return { lab, weight: weightOf(points), spread: spreadAround(lab, points), neutral, points };
}

/** The colours that points are told apart into: as many as they hold, or `count` where it is given; heaviest first. */
function clustersOf(
	points: readonly PoolPoint[],
	count: number | null,
	boardWeight: number,
	neutral: boolean,
): PaletteCluster[] {
	if (points.length === 0 || count === 0) return [];
	const items = thinned(points);
	const labs = packLabs(items.map(([first]) => first!.lab));
	const joins = completeLinkage(items.length, deltaE2000Matrix(labs, labs));
	const isKept = (members: readonly PoolPoint[]) => {
		const share = weightOf(members) / boardWeight;
		const inTwo = members.some(({ photo }) => photo !== members[0]!.photo);
		return share >= (inTwo ? KEPT_FROM_SHARE_IN_TWO : KEPT_FROM_SHARE);
	};
	const grouped = (groups: readonly number[][]) => groups.map((group) => group.flatMap((index) => items[index]!));
	const heaviestFirst = (groups: readonly PoolPoint[][]) => [...groups].sort((a, b) => weightOf(b) - weightOf(a));
	if (count === null) {
		const kept = grouped(groupsWithin(items.length, joins, COLOUR_WIDTH)).filter(isKept);
		return heaviestFirst(kept).map((members) => clusterOf(members, neutral));
	}
	// As asked: the coarsest telling apart that has so many colours worth keeping, else the one with most of them.
	let best: PoolPoint[][] = [];
	for (let joined = joins.length; joined >= 0 && best.length < count; joined--) {
		const kept = grouped(groupsAfter(items.length, joins, joined)).filter(isKept);
		if (kept.length > best.length) best = kept;
	}
	return heaviestFirst(best)
		.slice(0, count)
		.map((members) => clusterOf(members, neutral));
}

/** The colours of a pool, neutral and coloured ones told apart. `boardWeight` is the weight of the whole board: the number of its pictures. */
export function paletteClusters(
	pool: readonly PoolPoint[],
	{ base, coloured }: PaletteCounts,
	boardWeight: number,
): PaletteCluster[] {
	const { neutral, coloured: withColour } = splitNeutrals(pool);
	return [...clustersOf(neutral, base, boardWeight, true), ...clustersOf(withColour, coloured, boardWeight, false)];
}
