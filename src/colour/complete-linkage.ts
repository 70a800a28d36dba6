/** Two groups joined: the lowest indices of their members, and the largest distance between any two members of the joined group. */
export type Join = { readonly one: number; readonly other: number; readonly height: number };

/**
 * All joins of complete-linkage clustering, lowest first: groups are joined by the largest distance between their members, so that no
 * group is ever wider than the height at which it was joined. `distances` is row-major, count x count, symmetric. By chains of nearest
 * neighbours (Murtagh 1983), in the square of `count`; ties go to the lower index. Empty for fewer than two.
 */
export function completeLinkage(count: number, distances: Float64Array): Join[] {
	const apart = distances.slice();
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
			const widest = Math.max(apart[one * count + third]!, apart[other * count + third]!);
			apart[one * count + third] = widest;
			apart[third * count + one] = widest;
		}
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
