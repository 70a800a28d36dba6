import { useDeferredValue, useEffect, useState } from 'react';
import { PLACES } from '../../../../src/wardrobe/words/garment.ts';
import { SLOTS } from '../../../../src/wardrobe/words/slot.ts';
import { Field, SelectField } from '../../parts/field.tsx';
import type { GarmentFilter } from './garment-filter.ts';

const same = <T extends string>(values: readonly T[]) => values.map((value) => ({ value, label: value }));

/** Search and filters of the garments; typing never waits for the list. */
export function Filters({ filter, onChange }: { filter: GarmentFilter; onChange: (filter: GarmentFilter) => void }) {
	const [text, setText] = useState(filter.text);
	const settled = useDeferredValue(text);
	useEffect(() => {
		if (settled !== filter.text) onChange({ ...filter, text: settled });
	}, [settled, filter, onChange]);
	return (
		<search className="fields filters">
			<Field label="Search" hint="name, kind, colour, pattern, notes">
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
			<SelectField
				label="Slot"
				value={filter.slot}
				options={[{ value: 'any' as const, label: 'any' }, ...same(SLOTS)]}
				onChange={(slot) => onChange({ ...filter, slot })}
			/>
			<SelectField
				label="Place"
				value={filter.place}
				options={[{ value: 'here' as const, label: 'all that is here' }, ...same(PLACES)]}
				onChange={(place) => onChange({ ...filter, place })}
			/>
			<SelectField
				label="Fit"
				value={filter.verdict}
				options={same(['any', 'fits', 'near', 'off', 'unsure'] as const)}
				onChange={(verdict) => onChange({ ...filter, verdict })}
			/>
			<SelectField
				label="Only"
				value={filter.flag}
				options={[
					{ value: 'any', label: 'all' },
					{ value: 'kind', label: 'kind to confirm' },
					{ value: 'loner', label: 'loners?' },
					{ value: 'twin', label: 'twins' },
					{ value: 'basic', label: 'year-round basics' },
				]}
				onChange={(flag) => onChange({ ...filter, flag })}
			/>
			<SelectField
				label="Order"
				value={filter.order}
				options={[
					{ value: 'added', label: 'newest first' },
					{ value: 'fit', label: 'best fit first' },
					{ value: 'partners', label: 'most partners first' },
					{ value: 'name', label: 'by name' },
				]}
				onChange={(order) => onChange({ ...filter, order })}
			/>
		</search>
	);
}
