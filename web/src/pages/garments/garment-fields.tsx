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

const steps = (what: 'loved' | 'warmth', none: string) => [
	{ value: '', label: none },
	...([0, 1, 2, 3] as const).map((value) => ({ value: String(value), label: say(`fields.${what}${value}`) })),
];
const step = (text: string) => (text === '' ? null : (Number(text) as 0 | 1 | 2 | 3));

/** All that the user can tell of a garment; each field is kept as soon as it is left. */
export function GarmentFields({ garment }: { garment: Garment }) {
	const change = useChange((changes: Partial<GarmentDetails>) =>
		changeThing('changeGarment', garment.id, garment, changes),
	);
	const set = change.run;
	return (
		<div className="stack">
			<div className="fields">
				<TextField label={say('fields.name')} value={garment.name} onCommit={(name) => set({ name })} />
				<SelectField
					label={say('fields.kind')}
					value={garment.kind}
					options={KIND_NAMES.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) }))}
					onChange={(kind) => set({ kind })}
				/>
				<SelectField
					label={say('garments.place')}
					value={garment.place}
					options={PLACES.map((place) => ({ value: place, label: say(`whereabouts.${place}`) }))}
					onChange={(place) => set({ place })}
				/>
				<TextField
					label={say('fields.price')}
					type="number"
					min={0}
					step="any"
					value={garment.price?.toString() ?? ''}
					onCommit={(text) => set({ price: numberOrNull(text) })}
				/>
				<TextField
					label={say('fields.bought')}
					type="date"
					value={garment.boughtOn ?? ''}
					onCommit={(boughtOn) => set({ boughtOn: boughtOn || null })}
				/>
				<SelectField
					label={say('fields.condition')}
					value={garment.condition}
					options={CONDITIONS.map((condition) => ({ value: condition, label: say(`conditions.${condition}`) }))}
					onChange={(condition) => set({ condition })}
				/>
				<SelectField
					label={say('fields.loved')}
					value={garment.loved?.toString() ?? ''}
					options={steps('loved', say('fields.notTold'))}
					onChange={(text) => set({ loved: step(text) })}
				/>
				<SelectField
					label={say('fields.warmth')}
					value={garment.warmth?.toString() ?? ''}
					options={steps('warmth', say('fields.asKind'))}
					onChange={(text) => set({ warmth: step(text) })}
				/>
				<SelectField
					label={say('fields.pattern')}
					value={garment.patternByUser ?? ''}
					options={[
						{ value: '' as const, label: say('fields.asRead', { pattern: say(`patterns.${garment.pattern.type}`) }) },
						...PATTERN_TYPES.map((pattern) => ({ value: pattern, label: say(`patterns.${pattern}`) })),
					]}
					onChange={(pattern) => set({ patternByUser: pattern === '' ? null : pattern })}
				/>
				<TextField
					label={say('fields.occasions')}
					value={(garment.occasions ?? []).join(', ')}
					hint={say('fields.occasionsHint')}
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
						label={say('fields.wayOut')}
						value={garment.wayOut ?? ''}
						options={[
							{ value: '' as const, label: say('fields.notDecided') },
							...WAYS_OUT.map((way) => ({ value: way, label: say(`waysOut.${way}`) })),
						]}
						onChange={(way) => set({ wayOut: way === '' ? null : way })}
					/>
				) : null}
			</div>
			<fieldset>
				<legend>{say('fields.serves')}</legend>
				<span className="row">
					{YEAR_PARTS.map((part) => (
						<Check
							key={part}
							label={say(`yearParts.${part}`)}
							checked={garment.yearParts.includes(part)}
							onChange={(on) =>
								set({ yearParts: on ? [...garment.yearParts, part] : garment.yearParts.filter((one) => one !== part) })
							}
						/>
					))}
					<Check label={say('fields.basic')} checked={garment.basic} onChange={(basic) => set({ basic })} />
				</span>
			</fieldset>
			<TextArea label={say('fields.notes')} value={garment.notes} onCommit={(notes) => set({ notes })} />
			<TextArea label={say('fields.care')} value={garment.care} onCommit={(care) => set({ care })} />
			<Problem of={change.problem} />
		</div>
	);
}
