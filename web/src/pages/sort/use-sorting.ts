import { useState } from 'react';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { sortGarments, type ToSort } from '../../api/sort-garments.ts';
import { PLACE_OF, type SortItem, type SortWord } from './sort-order.ts';

/** Decisions of the season's round of sorting: made for one garment or many, taken back one by one, begun anew. */
export function useSorting(seasonId: string) {
	const [steps, setSteps] = useState<readonly (readonly SortItem[])[]>([]);
	const sort = useChange((told: readonly ToSort[]) => sortGarments(seasonId, told));
	const again = useChange(
		() => call('sortAgain', { params: { id: seasonId } }),
		() => setSteps([]),
	);
	const decide = (items: readonly SortItem[], word: SortWord) => {
		if (items.length === 0) return;
		sort.run(
			items.map(({ garment, said }) => ({
				garment,
				place: PLACE_OF[word],
				wayOut: word === 'let-go' ? (garment.wayOut ?? said.sorting.wayOut) : null,
				decided: true,
			})),
		);
		setSteps([...steps, items]);
	};
	const takeBack = () => {
		const last = steps.at(-1);
		if (!last) return;
		sort.run(last.map(({ garment }) => ({ garment, place: garment.place, wayOut: garment.wayOut, decided: false })));
		setSteps(steps.slice(0, -1));
	};
	return {
		decide,
		takeBack,
		canTakeBack: steps.length > 0,
		beginAgain: () => again.run(undefined),
		problem: sort.problem ?? again.problem,
	};
}

export type Sorting = ReturnType<typeof useSorting>;
