import { say } from '../../../../src/language/speak.ts';
import {
	CONDITIONS,
	type Garment,
	type GarmentDetails,
	PLACES,
	WAYS_OUT,
	YEAR_PARTS,
} from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import { PATTERN_TYPES } from '../../../../src/wardrobe/words/reading.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Check, SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { numberOrNull } from '../../parts/number-text.ts';
import { Problem } from '../../parts/problem.tsx';

const same = <T extends string>(values: readonly T[]) => values.map((value) => ({ value, label: value }));
const steps = (labels: readonly string[], none: string) => [
	{ value: '', label: none },
	...labels.map((label, value) => ({ value: String(value), label })),
];
const step = (text: string) => (text === '' ? null : (Number(text) as 0 | 1 | 2 | 3));

/** All that the user can tell of a garment; each field is kept as soon as it is left. */
export function GarmentFields({ garment }: { garment: Garment }) {
	const change = useChange((changes: Partial<GarmentDetails>) =>
		changeThing(`/api/garments/${garment.id}`, garment, changes),
	);
	const set = change.run;
	return (
		<div className="stack">
			<div className="fields">
				<TextField label="Name" value={garment.name} onCommit={(name) => set({ name })} />
				<SelectField
					label="Kind"
					value={garment.kind}
					options={KIND_NAMES.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) }))}
					onChange={(kind) => set({ kind })}
				/>
				<SelectField label="Place" value={garment.place} options={same(PLACES)} onChange={(place) => set({ place })} />
				<TextField
					label="Price"
					type="number"
					min={0}
					step="any"
					value={garment.price?.toString() ?? ''}
					onCommit={(text) => set({ price: numberOrNull(text) })}
				/>
				<TextField
					label="Bought on"
					type="date"
					value={garment.boughtOn ?? ''}
					onCommit={(boughtOn) => set({ boughtOn: boughtOn || null })}
				/>
				<SelectField
					label="Condition"
					value={garment.condition}
					options={same(CONDITIONS)}
					onChange={(condition) => set({ condition })}
				/>
				<SelectField
					label="How loved"
					value={garment.loved?.toString() ?? ''}
					options={steps(['not', 'a little', 'much', 'dearly'], 'not told')}
					onChange={(text) => set({ loved: step(text) })}
				/>
				<SelectField
					label="Warmth"
					value={garment.warmth?.toString() ?? ''}
					options={steps(['none', 'light', 'warm', 'winter'], 'as usual for the kind')}
					onChange={(text) => set({ warmth: step(text) })}
				/>
				<SelectField
					label="Pattern"
					value={garment.patternByUser ?? ''}
					options={[{ value: '' as const, label: `as read: ${garment.pattern.type}` }, ...same(PATTERN_TYPES)]}
					onChange={(pattern) => set({ patternByUser: pattern === '' ? null : pattern })}
				/>
				<TextField
					label="Occasions it serves, with commas"
					value={(garment.occasions ?? []).join(', ')}
					hint="empty: what its kind usually serves"
					onCommit={(text) =>
						set({
							occasions: text
								.split(',')
								.flatMap((one) => (one.trim() ? [one.trim()] : []))
								.slice(0, 12),
						})
					}
				/>
				{garment.place === 'leaving' ? (
					<SelectField
						label="Way out"
						value={garment.wayOut ?? ''}
						options={[{ value: '' as const, label: 'not decided' }, ...same(WAYS_OUT)]}
						onChange={(way) => set({ wayOut: way === '' ? null : way })}
					/>
				) : null}
			</div>
			<fieldset>
				<legend>Serves (none ticked: all year)</legend>
				<span className="row">
					{YEAR_PARTS.map((part) => (
						<Check
							key={part}
							label={part}
							checked={garment.yearParts.includes(part)}
							onChange={(on) =>
								set({ yearParts: on ? [...garment.yearParts, part] : garment.yearParts.filter((one) => one !== part) })
							}
						/>
					))}
					<Check label="year-round basic" checked={garment.basic} onChange={(basic) => set({ basic })} />
				</span>
			</fieldset>
			<TextArea label="Notes" value={garment.notes} onCommit={(notes) => set({ notes })} />
			<TextArea label="Care" value={garment.care} onCommit={(care) => set({ care })} />
			<Problem of={change.problem} />
		</div>
	);
}
