import { useQuery } from '@tanstack/react-query';
import { say } from '../../../../src/language/speak.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Empty } from '../../parts/empty.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { Loading } from '../../parts/loading.tsx';
import { Problem } from '../../parts/problem.tsx';

/** What each other garment of the slot would change if it took this one's place; the best first. */
export function SwapDialog({
	season,
	garment,
	garmentIds,
	garments,
	onSwap,
	onClose,
}: {
	season: Season;
	garment: Garment;
	garmentIds: readonly string[];
	garments: readonly Garment[];
	onSwap: (id: string) => void;
	onClose: () => void;
}) {
	const { data: swaps, error } = useQuery({
		queryKey: ['swaps', season.id, garment.id, garmentIds],
		queryFn: () => call('findSwaps', { params: { id: season.id }, body: { garmentIds, garmentId: garment.id } }),
	});
	const withId = new Map(garments.map((one) => [one.id, one]));
	return (
		<Dialog title={say('set.inPlaceOf', { name: garment.name })} onClose={onClose}>
			<Problem of={error} />
			{swaps?.length === 0 ? (
				<Empty title={say('set.nothingToSwap')}>
					<p>{say('set.nothingToSwapHow')}</p>
				</Empty>
			) : swaps ? (
				<ul className="tiles">
					{swaps.map(({ garmentId, sentence }) => {
						const other = withId.get(garmentId);
						if (!other) return null;
						return (
							<li key={other.id} className="tile">
								<GarmentPhoto garment={other} />
								<span className="tile-name">{other.name}</span>
								<span className="small">{sentence}</span>
								<Button small onPress={() => onSwap(other.id)} aria-label={say('set.takeNamed', { name: other.name })}>
									{say('set.takeThis')}
								</Button>
							</li>
						);
					})}
				</ul>
			) : (
				<Loading what={say('set.changes')} />
			)}
		</Dialog>
	);
}
