import { distanceBetween } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';

/** A colour with how much it weighs. */
type Weighted = { readonly lab: Lab65; readonly weight: number };

/** What all of them weigh together; 0 for none. */
export const weightOf = (all: readonly { readonly weight: number }[]): number =>
	all.reduce((sum, { weight }) => sum + weight, 0);

/** The weighted mean, coordinate by coordinate; `points` holds at least one with weight above 0. */
export function meanOf(points: readonly Weighted[]): Lab65 {
	const total = weightOf(points);
	const along = (axis: 0 | 1 | 2) =>
		points.reduce((sum, { lab, weight }) => sum + (total > 0 ? weight / total : 1 / points.length) * lab[axis], 0);
	return [along(0), along(1), along(2)];
}

/** The point with the least weighted distance to all others: their middle, and a colour that a picture really holds. First of equals. */
export function medoidOf(points: readonly Weighted[]): Lab65 {
	const costs = points.map(({ lab }) =>
		points.reduce((sum, other) => sum + other.weight * distanceBetween(lab, other.lab), 0),
	);
	return points[costs.indexOf(Math.min(...costs))]!.lab;
}

/** Weighted median CIEDE2000 of the points to `centre`; 0 for none. */
export function spreadAround(centre: Lab65, points: readonly Weighted[]): number {
	const byDistance = points
		.map(({ lab, weight }) => ({ distance: distanceBetween(lab, centre), weight }))
		.sort((one, other) => one.distance - other.distance);
	const half = weightOf(byDistance) / 2;
	let passed = 0;
	for (const { distance, weight } of byDistance) {
		passed += weight;
		if (passed >= half) return distance;
	}
	return 0;
}
