/** Two groups joined: the lowest indices of their members, and how far the two groups lay apart. */
export type Join = { readonly one: number; readonly other: number; readonly height: number };

/** How far a group lies from two joined ones, from its distances to each of them and their numbers of members. */
type DistanceToJoined = (toOne: number, toOther: number, ofOne: number, ofOther: number) => number;

/**
 * All joins of complete-linkage clustering, lowest first: groups are joined by the largest distance between their members, so that no
 * group is ever wider than the height at which it was joined. `distances` is row-major, count x count, symmetric. In the square of `count`; ties
 * go to the lower index. Empty for fewer than two.
 */
export const completeLinkage = (count: number, distances: Float64Array): Join[] => joinsOf(count, distances, Math.max);

/** The same, but groups are joined by the mean distance between members of the one and of the other. */
export const averageLinkage = (count: number, distances: Float64Array): Join[] =>
	joinsOf(
		count,
		distances,
		(toOne, toOther, ofOne, ofOther) => (ofOne * toOne + ofOther * toOther) / (ofOne + ofOther),
	);

/** By chains of nearest neighbours (Murtagh 1983). */
function joinsOf(count: number, distances: Float64Array, distanceToJoined: DistanceToJoined): Join[] {
	const apart = distances.slice();
	const members = new Float64Array(count).fill(1);
	const alive = new Uint8Array(count).fill(1);
	const joins: Join[] = [];
	const chain: number[] = [];
	while (joins.length < count - 1) {
		if (chain.length === 0) chain.push(alive.indexOf(1));
		const end = chain[chain.length - 1]!;
		const before = chain[chain.length - 2] ?? -1;
		let nearest = before;
		let least = before < 0 ? Number.POSITIVE_INFINITY : apart[end * count + before]!;
		for (let other = 0; other < count; other++) {
			if (alive[other] === 1 && other !== end && apart[end * count + other]! < least) {
				least = apart[end * count + other]!;
				nearest = other;
			}
		}
		if (nearest !== before) {
			chain.push(nearest);
			continue;
		}
		chain.length -= 2;
		const one = Math.min(end, before);
		const other = Math.max(end, before);
		joins.push({ one, other, height: least });
		alive[other] = 0;
		for (let third = 0; third < count; third++) {
			const distance = distanceToJoined(
				apart[one * count + third]!,
				apart[other * count + third]!,
				members[one]!,
				members[other]!,
			);
			apart[one * count + third] = distance;
			apart[third * count + one] = distance;
		}
		members[one]! += members[other]!;
	}
	return joins.sort((a, b) => a.height - b.height || a.one - b.one || a.other - b.other);
}

/** The members of each group after the first `joined` joins, groups by their lowest member. */
export function groupsAfter(count: number, joins: readonly Join[], joined: number): number[][] {
	const rootOf = Array.from({ length: count }, (_, index) => index);
	const root = (index: number): number => {
		let at = index;
		while (rootOf[at] !== at) at = rootOf[at]!;
		return at;
	};
	for (const { one, other } of joins.slice(0, joined)) {
		const [low, high] = [root(one), root(other)].sort((a, b) => a - b) as [number, number];
		rootOf[high] = low;
	}
	const groups = new Map<number, number[]>();
	for (let index = 0; index < count; index++) {
		const at = root(index);
		const members = groups.get(at);
		if (members) members.push(index);
		else groups.set(at, [index]);
	}
	return [...groups.values()];
}

/** The groups that are nowhere wider than `width`. */
export const groupsWithin = (count: number, joins: readonly Join[], width: number): number[][] =>
	groupsAfter(count, joins, joins.filter(({ height }) => height <= width).length);
