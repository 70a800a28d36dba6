import fc from 'fast-check';
import { kmeans } from 'ml-kmeans';
import { Vibrant } from 'node-vibrant/node';
import { describe, expect, it } from 'vitest';
import { clusterLab } from '../../src/colour/cluster.ts';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { labFromPixels } from '../../src/colour/lab-pixels.ts';
import { type Lab65, labFromSrgb8 } from '../../src/colour/lab65.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';

const packed = (labs: readonly Lab65[]) => Float32Array.from(labs.flatMap((lab) => [...lab]));

const aPoint: fc.Arbitrary<Lab65> = fc.tuple(
	fc.float({ min: 0, max: 100, noNaN: true }),
	fc.float({ min: -90, max: 90, noNaN: true }),
	fc.float({ min: -90, max: 90, noNaN: true }),
);

/** Summed weighted squared distance of every point to its centre. */
const costOf = (points: Float32Array, weights: readonly number[], centres: readonly Lab65[]) =>
	weights.reduce((sum, weight, i) => {
		const squares = centres.map((centre) =>
			centre.reduce((total, value, axis) => total + (value - points[i * 3 + axis]!) ** 2, 0),
		);
		return sum + weight * Math.min(...squares);
	}, 0);

describe('clustering colours', () => {
	it('finds four cloths and their areas in a noisy picture, heaviest first', () => {
		const random = seededRandom('four cloths');
		const cloths: [Lab65, number][] = [
			[[84, 1, 11], 1000],
			[[18, 0, -3], 600],
			[[45, 38, 40], 300],
			[[45, -28, -10], 100],
		];
		const points = packed(
			cloths.flatMap(([[L, a, b], count]) =>
				Array.from({ length: count }, (): Lab65 => [L + random() * 4 - 2, a + random() * 4 - 2, b + random() * 4 - 2]),
			),
		);
		const { centres, shares } = clusterLab(points, null, 4);
		expect(shares).toEqual([0.5, 0.3, 0.15, 0.05]);
		for (const [index, [lab]] of cloths.entries()) expect(deltaE2000(centres[index]!, lab)).toBeLessThan(0.5);
	});

	it('treats a weight like so many equal points', () => {
		const weighted = clusterLab(
			packed([
				[20, 0, 0],
				[30, 5, 0],
				[80, 0, 9],
			]),
			Float32Array.from([3, 1, 2]),
			2,
		);
		const repeated = clusterLab(
			packed([
				[20, 0, 0],
				[20, 0, 0],
				[20, 0, 0],
				[30, 5, 0],
				[80, 0, 9],
				[80, 0, 9],
			]),
			null,
			2,
		);
		expect(weighted.centres).toEqual(repeated.centres);
		expect(weighted.shares).toEqual(repeated.shares);
		expect([...weighted.labels]).toEqual([0, 0, 1]);
	});

	it('settles where ml-kmeans itself settles from the same result', () => {
		fc.assert(
			fc.property(fc.array(aPoint, { minLength: 12, maxLength: 60 }), (points) => {
				const found = clusterLab(packed(points), null, 4);
				const again = kmeans(
					points.map((point) => [...point]),
					found.centres.length,
					{ initialization: found.centres.map((centre) => [...centre]), maxIterations: 1 },
				);
				for (const [index, centre] of again.centroids.entries())
					for (const [axis, value] of centre.entries())
						expect(Math.abs(value - found.centres[index]![axis]!)).toBeLessThan(0.05);
			}),
		);
	});

	it('is at least as good as the median of 20 chance starts of ml-kmeans (kmeans++), on 20 pictures', () => {
		const random = seededRandom('twenty pictures');
		const better = Array.from({ length: 20 }, (_, picture) => {
			const centres = Array.from(
				{ length: 9 },
				(): Lab65 => [random() * 100, random() * 120 - 60, random() * 120 - 60],
			);
			const points = Array.from({ length: 300 }, (): Lab65 => {
				const [L, a, b] = centres[Math.floor(random() * 9)]!;
				return [L + random() * 12, a + random() * 12, b + random() * 12];
			});
			const cost = (found: readonly (readonly number[])[]) =>
				costOf(
					packed(points),
					points.map(() => 1),
					found as unknown as Lab65[],
				);
			const own = cost(clusterLab(packed(points), null, 6).centres);
			const others = Array.from({ length: 20 }, (_, seed) =>
				cost(
					kmeans(
						points.map((point) => [...point]),
						6,
						{ seed: picture * 100 + seed },
					).centroids,
				),
			).sort((one, other) => one - other);
			return own <= others[10]! * 1.0001;
		});
		expect(better.filter(Boolean).length).toBeGreaterThanOrEqual(16);
	});

	it('gives the same numbers again, all finite, with shares that sum to 1', () => {
		fc.assert(
			fc.property(fc.array(aPoint, { minLength: 1, maxLength: 40 }), fc.integer({ min: 1, max: 6 }), (points, k) => {
				const once = clusterLab(packed(points), null, k);
				expect(clusterLab(packed(points), null, k)).toEqual(once);
				expect(once.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
				expect(once.centres.flat().every(Number.isFinite)).toBe(true);
				expect([...once.labels].every((label) => label < once.centres.length)).toBe(true);
			}),
		);
	});

	it('keeps the folds of one cloth together when lightness counts less', () => {
		const folds = packed([
			[20, 20, 20],
			[75, 20, 20],
			[45, 20, 20],
			[45, -5, 20],
		]);
		expect([...clusterLab(folds, null, 2, { lightnessWeight: 0.2 }).labels]).toEqual([0, 0, 0, 1]);
		expect([...clusterLab(folds, null, 2).labels]).not.toEqual([0, 0, 0, 1]);
	});

	it('gives fewer clusters where there are fewer colours, and none where there is nothing', () => {
		expect(
			clusterLab(
				packed([
					[50, 0, 0],
					[50, 0, 0],
				]),
				null,
				5,
			).centres,
		).toEqual([[50, 0, 0]]);
		expect(clusterLab(new Float32Array(0), null, 3)).toEqual({ centres: [], shares: [], labels: new Uint8Array(0) });
		expect(clusterLab(packed([[50, 0, 0]]), Float32Array.from([0]), 3).centres).toEqual([]);
		expect(
			clusterLab(
				packed([
					[50, 0, 0],
					[90, 0, 0],
				]),
				Float32Array.from([1, 0]),
				3,
			).centres,
		).toEqual([[50, 0, 0]]);
	});

	it('finds the colours that node-vibrant finds in flat patches', async () => {
		const patches: [number, number, number][] = [
			[200, 40, 30],
			[30, 90, 160],
			[230, 220, 200],
			[40, 120, 60],
		];
		const pixels = new Uint8ClampedArray(64 * 64 * 4);
		for (let i = 0; i < 64 * 64; i++) pixels.set([...patches[Math.floor(i / 1024)]!, 255], i * 4);
		class Picture {
			load = async () => this;
			clear() {}
			update() {}
			getWidth = () => 64;
			getHeight = () => 64;
			resize() {}
			getPixelCount = () => 64 * 64;
			getImageData = () => ({ data: pixels, width: 64, height: 64 });
			remove() {}
			scaleDown() {}
		}
		const vibrant = new Vibrant('', { ImageClass: Picture as never, colorCount: 8, filters: [] });
		await vibrant.getPalette();
		// The library's own declarations lose the type of its result.
		const found = vibrant.result as unknown as {
			readonly colors: readonly { readonly rgb: [number, number, number] }[];
		};
		const opinions = found.colors.map(({ rgb: [r, g, b] }) => labFromSrgb8(r, g, b));
		const own = clusterLab(labFromPixels(pixels, 4), null, 4).centres;
		expect(own).toHaveLength(4);
		// node-vibrant works on 5 bits a channel, so its colours are off by up to 7 of 255.
		for (const centre of own)
			expect(Math.min(...opinions.map((opinion) => deltaE2000(opinion, centre)))).toBeLessThan(4);
	});
});
