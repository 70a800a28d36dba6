import { say } from '../../../../src/language/speak.ts';
import { type GarmentDetails, WAYS_OUT, type WayOut } from '../../../../src/wardrobe/words/garment.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';
import type { SortItem } from './sort-order.ts';

function LeavingRow({ item: { garment, said } }: { item: SortItem }) {
	const { name } = garment;
	const change = useChange((changes: Partial<GarmentDetails>) =>
		changeThing('changeGarment', garment.id, garment, changes),
	);
	const suggested = say(`waysOut.${said.sorting.wayOut ?? 'give'}`);
	return (
		<li className="row leaving-row">
			<span className="tile-name">{name}</span>
			<SelectField<WayOut | ''>
				label={say('sort.wayOutOf', { name })}
				value={garment.wayOut ?? ''}
				options={[
					{ value: '', label: say('sort.wayOutOpen', { wayOut: suggested }) },
					...WAYS_OUT.map((way) => ({ value: way, label: say(`waysOut.${way}`) })),
				]}
				onChange={(way) => change.run({ wayOut: way === '' ? null : way })}
			/>
			<span className="row">
				<Button small onPress={() => change.run({ place: 'gone' })} aria-label={say('sort.isGoneNamed', { name })}>
					{say('sort.isGone')}
				</Button>
				<Button
					small
					onPress={() => change.run({ place: 'rail', wayOut: null })}
					aria-label={say('sort.keepAfterAllNamed', { name })}
				>
					{say('sort.keepAfterAll')}
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
			<h2 id="leaving">{say('sort.leaving')}</h2>
			<ul>
				{leaving.map((item) => (
					<LeavingRow key={item.garment.id} item={item} />
				))}
			</ul>
		</section>
	);
}
