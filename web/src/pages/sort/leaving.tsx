import { type GarmentDetails, WAYS_OUT, type WayOut } from '../../../../src/wardrobe/words/garment.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';
import type { SortItem } from './sort-order.ts';

function LeavingRow({ item: { garment, said } }: { item: SortItem }) {
	const change = useChange((changes: Partial<GarmentDetails>) =>
		changeThing('changeGarment', garment.id, garment, changes),
	);
	return (
		<li className="row leaving-row">
			<span className="tile-name">{garment.name}</span>
			<SelectField<WayOut | ''>
				label={`Way out of ${garment.name}`}
				value={garment.wayOut ?? ''}
				options={[
					{ value: '', label: `not decided (suggested: ${said.sorting.wayOut ?? 'give'})` },
					...WAYS_OUT.map((way) => ({ value: way, label: way })),
				]}
				onChange={(way) => change.run({ wayOut: way === '' ? null : way })}
			/>
			<span className="row">
				<Button small onPress={() => change.run({ place: 'gone' })} aria-label={`${garment.name} is gone`}>
					It is gone
				</Button>
				<Button
					small
					onPress={() => change.run({ place: 'rail', wayOut: null })}
					aria-label={`Keep ${garment.name} after all`}
				>
					Keep it after all
				</Button>
			</span>
			<Problem of={change.problem} />
		</li>
	);
}

/** What leaves the house, each with its way out. */
export function Leaving({ items }: { items: readonly SortItem[] }) {
	const leaving = items.filter(({ garment }) => garment.place === 'leaving');
	if (leaving.length === 0) return null;
	return (
		<section className="section" aria-labelledby="leaving">
			<h2 id="leaving">Leaving</h2>
			<ul>
				{leaving.map((item) => (
					<LeavingRow key={item.garment.id} item={item} />
				))}
			</ul>
		</section>
	);
}
