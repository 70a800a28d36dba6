import { useDeferredValue, useEffect, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { PLACES } from '../../../../src/wardrobe/words/garment.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { Field, SelectField } from '../../parts/field.tsx';
import type { GarmentFilter } from './garment-filter.ts';

type Props = { filter: GarmentFilter; onChange: (filter: GarmentFilter) => void };

/** The search; typing never waits for the list. */
function SearchField({ filter, onChange }: Props) {
	const [text, setText] = useState(filter.text);
	const settled = useDeferredValue(text);
	useEffect(() => {
		if (settled !== filter.text) onChange({ ...filter, text: settled });
	}, [settled, filter, onChange]);
	return (
		<Field label={say('garments.search')} hint={say('garments.searchHint')}>
			{(ids) => (
				<input
					{...ids}
					type="search"
					className="input"
					value={text}
					onChange={(event) => setText(event.target.value)}
				/>
			)}
		</Field>
	);
}

/** Search and filters of the garments. */
export function Filters({ filter, onChange }: Props) {
	return (
		<search className="fields filters">
			<SearchField filter={filter} onChange={onChange} />
			<SelectField
				label={say('garments.slot')}
				value={filter.slot}
				options={[
					{ value: 'any' as const, label: say('verdicts.any') },
					...SLOTS.map((slot) => ({ value: slot, label: say(`slots.${slot}`) })),
				]}
				onChange={(slot) => onChange({ ...filter, slot })}
			/>
			<SelectField
				label={say('garments.place')}
				value={filter.place}
				options={[
					{ value: 'here' as const, label: say('garments.here') },
					...PLACES.map((place) => ({ value: place, label: say(`whereabouts.${place}`) })),
				]}
				onChange={(place) => onChange({ ...filter, place })}
			/>
			<SelectField
				label={say('garments.fit')}
				value={filter.verdict}
				options={(['any', 'fits', 'near', 'off', 'unsure'] as const).map((value) => ({
					value,
					label: say(`verdicts.${value}`),
				}))}
				onChange={(verdict) => onChange({ ...filter, verdict })}
			/>
			<SelectField
				label={say('garments.only')}
				value={filter.flag}
				options={[
					{ value: 'any', label: say('garments.everything') },
					{ value: 'kind', label: say('garments.kindOpen') },
					{ value: 'loner', label: say('garments.loners') },
					{ value: 'twin', label: say('garments.twins') },
					{ value: 'basic', label: say('garments.basics') },
				]}
				onChange={(flag) => onChange({ ...filter, flag })}
			/>
			<SelectField
				label={say('garments.order')}
				value={filter.order}
				options={[
					{ value: 'added', label: say('garments.newest') },
					{ value: 'fit', label: say('garments.bestFit') },
					{ value: 'partners', label: say('garments.mostPartners') },
					{ value: 'name', label: say('garments.byName') },
				]}
				onChange={(order) => onChange({ ...filter, order })}
			/>
		</search>
	);
}
