import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageLinkage, completeLinkage, groupsWithin } from '../../src/colour/linkage.ts';

/** Euclidean distances of points on a plane, row-major. */
const distancesOf = (points: readonly (readonly [number, number])[]): Float64Array =>
	Float64Array.from(points.flatMap(([x, y]) => points.map(([u, v]) => Math.hypot(x - u, y - v))));

describe('linkage', () => {
	// Nine points and the heights that scipy gives for them: scipy.cluster.hierarchy.linkage(pdist(points), 'complete') of 1.17.1, 'average' of 1.10.1.
	const POINTS = [
		[7.6, 78],
		[43.8, 72.3],
		[97.8, 53.8],
		[50.1, 7.2],
		[26.8, 50],
		[67.9, 80.4],
		[38.1, 6.6],
		[28.8, 91],
		[21.3, 45.2],
	] as const;
	it.each([
		['complete', completeLinkage, [7.3, 12.015, 23.9727, 35.5462, 40.0196, 46.41, 79.5894, 93.3899]],
		['average', averageLinkage, [7.3, 12.015, 23.9727, 30.7572, 36.7032, 40.0196, 61.2749, 67.4295]],
	] as const)('joins at the heights that scipy finds, %s', (_, linkage, heights) => {
		const joins = linkage(POINTS.length, distancesOf(POINTS));
		for (const [index, { height }] of joins.entries()) expect(height).toBeCloseTo(heights[index]!, 3);
	});

	it('makes groups that are nowhere wider than asked, whatever the points, each point in one group', () => {
		const coordinate = fc.double({ min: 0, max: 100, noNaN: true });
		fc.assert(
			fc.property(fc.array(fc.tuple(coordinate, coordinate), { maxLength: 25 }), coordinate, (points, width) => {
				const distances = distancesOf(points);
				const groups = groupsWithin(points.length, completeLinkage(points.length, distances), width);
				expect(groups.flat().sort((a, b) => a - b)).toEqual([...points.keys()]);
				for (const group of groups)
					for (const one of group)
						for (const other of group) expect(distances[one * points.length + other]).toBeLessThanOrEqual(width);
			}),
		);
	});

	it('has nothing to join in fewer than two', () => {
		expect(completeLinkage(0, new Float64Array())).toEqual([]);
		expect(groupsWithin(1, completeLinkage(1, new Float64Array(1)), 5)).toEqual([[0]]);
	});
});
