import { describe, expect, it } from 'vitest';
import { greedySeeds } from '../../src/colour/cluster-seeds.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';

/** Points on a grid, so that several lie at one place and costs tie. */
function cloud(name: string, count: number, steps: number) {
	const random = seededRandom(name);
	return {
		points: Float64Array.from({ length: count * 3 }, () => Math.floor(random() * steps)),
		weights: Float64Array.from({ length: count }, () => 1 + Math.floor(random() * 4)),
	};
}

/** Arthur and Vassilvitskii's greedy rule (2007) without chance, word for word: every point tried each time, the first of the best taken. */
function byTryingAll(points: Float64Array, weights: Float64Array, k: number, first: number): number[] {
	const squared = (one: number, other: number) =>
		[0, 1, 2].reduce((sum, axis) => sum + (points[one * 3 + axis]! - points[other * 3 + axis]!) ** 2, 0);
	const costOf = (seeds: readonly number[]) =>
		weights.reduce((sum, weight, i) => sum + weight * Math.min(...seeds.map((seed) => squared(i, seed))), 0);
	const seeds = [first];
	while (seeds.length < k && costOf(seeds) > 0) {
		const costs = Array.from(weights, (_, candidate) => costOf([...seeds, candidate]));
		seeds.push(costs.indexOf(Math.min(...costs)));
	}
	return seeds;
}

describe('greedy seeds', () => {
	it.each([
		[40, 4],
		[80, 12],
		[120, 100],
		[25, 2],
	])('are those that trying all points gives (clouds of %i points on %i steps)', (count, steps) => {
		for (let i = 0; i < 20; i++) {
			const { points, weights } = cloud(`cloud ${i}`, count, steps);
			const seeds = greedySeeds(points, weights, 8);
			expect(seeds).toEqual(byTryingAll(points, weights, 8, seeds[0]!));
		}
	});
});

describe('greedy seeds after given ones', () => {
	it('are the rest of those that are found alone, and count the given ones', () => {
		for (let i = 0; i < 20; i++) {
			const { points, weights } = cloud(`given ${i}`, 60, 12);
			const [first, ...rest] = greedySeeds(points, weights, 6);
			const place = [points[first! * 3]!, points[first! * 3 + 1]!, points[first! * 3 + 2]!] as const;
			expect(greedySeeds(points, weights, 6, [place])).toEqual(rest);
		}
	});
});
