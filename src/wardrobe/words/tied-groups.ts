/** A group is at most so many steps wide: a long staircase is no one group. */
const WIDEST = 2;

/**
 * Items in groups that cannot be told apart, the highest values first: neighbours that differ by less than `step` are in one group, up to two steps wide. What other photos would reorder is
 * so taken as equal, and something that they would not change can order it. Items of one value come in the given order.
 */
export function tiedGroups<Item>(
	items: readonly Item[],
	worthOf: (item: Item) => number,
	step: number,
): readonly (readonly Item[])[] {
	const groups: Item[][] = [];
	for (const item of [...items].sort((a, b) => worthOf(b) - worthOf(a))) {
		const group = groups.at(-1);
		const [first] = group ?? [];
		const isTied =
			group !== undefined &&
			first !== undefined &&
			worthOf(group.at(-1)!) - worthOf(item) < step &&
			worthOf(first) - worthOf(item) < WIDEST * step;
		if (isTied) group.push(item);
		else groups.push([item]);
	}
	return groups;
}
