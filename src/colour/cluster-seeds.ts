/**
 * Up to this many points every point is tried as the next seed, which is the plain greedy rule and does not depend on the order of
 * the points. Above it trying all costs n x n, so {@link CANDIDATES} points stand in for them.
 */
const TRY_ALL_UP_TO = 400;

/** Candidates for each next seed among many points. */
const CANDIDATES = 24;

/** A place in the space of the points. */
type Place = readonly [number, number, number];

/** Squared distance of a point of a packed cloud to a place. */
function squared(points: Float64Array, at: number, place: Place): number {
	const x = points[at * 3]! - place[0];
	const y = points[at * 3 + 1]! - place[1];
	const z = points[at * 3 + 2]! - place[2];
	return x * x + y * y + z * z;
}

const placeOf = (points: Float64Array, index: number): Place => [
	points[index * 3]!,
	points[index * 3 + 1]!,
	points[index * 3 + 2]!,
];

/** The point with weight that lies nearest to the weighted mean; -1 without points or without weight. */
function nearestToMean(points: Float64Array, weights: Float64Array): number {
	const mean = [0, 0, 0];
	let total = 0;
	for (let i = 0; i < weights.length; i++) {
		total += weights[i]!;
		for (let axis = 0; axis < 3; axis++) mean[axis]! += weights[i]! * points[i * 3 + axis]!;
	}
	let nearest = -1;
	let least = Number.POSITIVE_INFINITY;
	for (let i = 0; i < weights.length && total > 0; i++) {
		if (weights[i] === 0) continue;
		let distance = 0;
		for (let axis = 0; axis < 3; axis++) distance += (points[i * 3 + axis]! - mean[axis]! / total) ** 2;
		if (distance < least) {
			least = distance;
			nearest = i;
		}
	}
	return nearest;
}

/** Points to try as the next seed: all that cost something, or those at even steps through the summed cost. */
function candidatesOf(cost: Float64Array, total: number): number[] {
	if (cost.length <= TRY_ALL_UP_TO) {
		const costing: number[] = [];
		for (let index = 0; index < cost.length; index++) if (cost[index]! > 0) costing.push(index);
		return costing;
	}
	const chosen: number[] = [];
	let sum = 0;
	let step = 0;
	for (let index = 0; index < cost.length && step < CANDIDATES; index++) {
		sum += cost[index]!;
		if (cost[index] === 0 || sum < ((step + 0.5) * total) / CANDIDATES) continue;
		chosen.push(index);
		while (step < CANDIDATES && sum >= ((step + 0.5) * total) / CANDIDATES) step++;
	}
	return chosen;
}

/** The candidate that may save most; the first of several. */
function mostPromising(candidates: readonly number[], mostSaved: Float64Array): number {
	let promising = candidates[0]!;
	for (const candidate of candidates) if (mostSaved[candidate]! > mostSaved[promising]!) promising = candidate;
	return promising;
}

/** Summed cost if `candidate` became a seed. */
function costWith(points: Float64Array, weights: Float64Array, cost: Float64Array, candidate: number): number {
	const atX = points[candidate * 3]!;
	const atY = points[candidate * 3 + 1]!;
	const atZ = points[candidate * 3 + 2]!;
	let left = 0;
	for (let i = 0; i < cost.length; i++) {
		const x = points[i * 3]! - atX;
		const y = points[i * 3 + 1]! - atY;
		const z = points[i * 3 + 2]! - atZ;
		const reached = weights[i]! * (x * x + y * y + z * z);
		left += Math.min(reached, cost[i]!);
	}
	return left;
}

/** Keeps what rounding in long sums does from ruling out a candidate. */
const ROUNDING = 1 - 1e-9;

/**
 * Indices of at most `k` points as seeds for k-means, distinct in colour, deterministic: first the point nearest to the weighted mean, then
 * each time the point that lowers the summed weighted squared distance most (the greedy form of k-means++, Arthur and
 * Vassilvitskii 2007, without chance). Ties go to the lowest index. `points` holds triples, `weights` one number a point. Fewer seeds where there
 * are fewer distinct points, none without points or without weight. `given` are seeds that there are already: `k` counts them, and no point is taken for
 * being near the mean.
 */
export function greedySeeds(
	points: Float64Array,
	weights: Float64Array,
	k: number,
	given: readonly Place[] = [],
): number[] {
	const first = nearestToMean(points, weights);
	if (first < 0) return [];
	const seeds = given.length > 0 ? [] : [first];
	const cost = new Float64Array(weights.length).fill(Number.POSITIVE_INFINITY);
	const lower = (place: Place) => {
		for (let i = 0; i < cost.length; i++) cost[i] = Math.min(cost[i]!, weights[i]! * squared(points, i, place));
	};
	for (const place of given.length > 0 ? given : [placeOf(points, first)]) lower(place);
	// The more seeds there are, the less one more can save: what a point saved when it was last tried is the most that it can save now
	// (Minoux 1978). So few are tried again.
	const mostSaved = new Float64Array(cost.length).fill(Number.POSITIVE_INFINITY);
	while (given.length + seeds.length < k) {
		let total = 0;
		for (let i = 0; i < cost.length; i++) total += cost[i]!;
		if (!(total > 0)) break;
		let best = -1;
		let lowest = Number.POSITIVE_INFINITY;
		const candidates = candidatesOf(cost, total);
		// First the one that rules out most others.
		candidates.unshift(mostPromising(candidates, mostSaved));
		for (const candidate of candidates) {
			if (candidate === best || (total - mostSaved[candidate]!) * ROUNDING > lowest) continue;
			const left = costWith(points, weights, cost, candidate);
			mostSaved[candidate] = total - left;
			if (left > lowest || (left === lowest && candidate > best)) continue;
			lowest = left;
			best = candidate;
		}
		seeds.push(best);
		lower(placeOf(points, best));
	}
	return seeds;
}
