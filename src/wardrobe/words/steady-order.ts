/**
 * Items by worth, the highest first, without changing places for less than `step`: what stood in `before` keeps its order until something is worth more than that step more. What did not stand
 * there goes ahead of everything that is worth less. Of equal worth: in the given order.
 */
export function steadyOrder<Item>(
	items: readonly Item[],
	idOf: (item: Item) => string,
	worthOf: (item: Item) => number,
	{ before, step }: { readonly before: readonly string[]; readonly step: number },
): Item[] {
	const placeBefore = new Map(before.map((id, place) => [id, place]));
	const wasThere = (item: Item) => placeBefore.has(idOf(item));
	const known = items
		.filter(wasThere)
		.sort((one, other) => placeBefore.get(idOf(one))! - placeBefore.get(idOf(other))!);
	const others = items.filter((item) => !wasThere(item)).sort((one, other) => worthOf(other) - worthOf(one));
	const order: Item[] = [];
	for (const item of [...known, ...others]) {
		let place = order.length;
		while (place > 0) {
			const ahead = order[place - 1]!;
			const needed = wasThere(ahead) ? step : 0;
			if (worthOf(item) - worthOf(ahead) <= needed) break;
			place--;
		}
		order.splice(place, 0, item);
	}
	return order;
}
