import { useQuery } from '@tanstack/react-query';
import type { WhatIf } from '../../../../src/wardrobe/line-up/what-if.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { request } from '../../api/request.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Empty } from '../../parts/empty.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { Loading } from '../../parts/loading.tsx';
import { Problem } from '../../parts/problem.tsx';

/** Asked one after the other: each answer weighs the whole set anew. */
async function askAll(
	seasonId: string,
	garmentIds: readonly string[],
	out: string,
	others: readonly Garment[],
): Promise<ReadonlyMap<string, WhatIf>> {
	const answers = new Map<string, WhatIf>();
	for (const { id } of others) {
		const body = { garmentIds, remove: [out], add: [id] };
		answers.set(id, await request<WhatIf>('POST', `/api/seasons/${seasonId}/line-up/what-if`, body));
	}
	return answers;
}

/** What each other garment of the slot would change if it took this one's place; the best first. */
export function SwapDialog({
	season,
	garment,
	garmentIds,
	others,
	onSwap,
	onClose,
}: {
	season: Season;
	garment: Garment;
	garmentIds: readonly string[];
	others: readonly Garment[];
	onSwap: (id: string) => void;
	onClose: () => void;
}) {
	const { data, error } = useQuery({
		queryKey: ['what-if', season.id, garment.id, garmentIds, others.map(({ id }) => id)],
		queryFn: () => askAll(season.id, garmentIds, garment.id, others),
	});
	const sorted = [...others].sort(
		(a, b) => (data?.get(b.id)?.outfitsChange ?? 0) - (data?.get(a.id)?.outfitsChange ?? 0),
	);
	return (
		<Dialog title={`In place of ${garment.name}`} onClose={onClose}>
			<Problem of={error} />
			{others.length === 0 ? (
				<Empty title="Nothing to swap with">
					<p>No other garment of this slot is on the rail.</p>
				</Empty>
			) : data ? (
				<ul className="tiles">
					{sorted.map((other) => (
						<li key={other.id} className="tile">
							<GarmentPhoto garment={other} />
							<span className="tile-name">{other.name}</span>
							<span className="small">{data.get(other.id)?.sentence}</span>
							<Button small onPress={() => onSwap(other.id)} aria-label={`Swap in ${other.name}`}>
								Take this one
							</Button>
						</li>
					))}
				</ul>
			) : (
				<Loading what="what each would change" />
			)}
		</Dialog>
	);
}
