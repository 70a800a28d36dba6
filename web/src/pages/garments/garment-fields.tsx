import { say } from '../../../../src/language/speak.ts';
import {
	CONDITIONS,
	type Garment,
	type GarmentDetails,
	PLACES,
	WAYS_OUT,
} from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import { PATTERN_TYPES } from '../../../../src/wardrobe/words/reading.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Check, SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { PriceField } from '../../parts/price-field.tsx';
import { Problem } from '../../parts/problem.tsx';
import { YearPartChecks } from '../../parts/year-part-checks.tsx';

const MOST_OCCASIONS = 12;

const steps = (what: 'loved' | 'warmth', none: string) => [
	{ value: '', label: none },
	...([0, 1, 2, 3] as const).map((value) => ({ value: String(value), label: say(`fields.${what}${value}`) })),
];
const step = (text: string) => (text === '' ? null : (Number(text) as 0 | 1 | 2 | 3));

type PartProps = { garment: Garment; onChange: (changes: Partial<GarmentDetails>) => void };

/** What it is, where it is, and how it was come by. */
function MainFields({ garment, onChange }: PartProps) {
	return (
		<>
			<TextField label={say('fields.name')} value={garment.name} onCommit={(name) => onChange({ name })} />
			<SelectField
				label={say('fields.kind')}
				value={garment.kind}
				options={KIND_NAMES.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) }))}
				onChange={(kind) => onChange({ kind })}
			/>
			<SelectField
				label={say('garments.place')}
				value={garment.place}
				options={PLACES.map((place) => ({ value: place, label: say(`whereabouts.${place}`) }))}
				onChange={(place) => onChange({ place })}
			/>
			<PriceField price={garment.price} onCommit={(price) => onChange({ price })} />
			<TextField
				label={say('fields.bought')}
				type="date"
				value={garment.boughtOn ?? ''}
				onCommit={(boughtOn) => onChange({ boughtOn: boughtOn || null })}
			/>
		</>
	);
}

/** How it is: worn or new, loved, warm, patterned. */
function StateFields({ garment, onChange }: PartProps) {
	return (
		<>
			<SelectField
				label={say('fields.condition')}
				value={garment.condition}
				options={CONDITIONS.map((condition) => ({ value: condition, label: say(`conditions.${condition}`) }))}
				onChange={(condition) => onChange({ condition })}
			/>
			<SelectField
				label={say('fields.loved')}
				value={garment.loved?.toString() ?? ''}
				options={steps('loved', say('fields.notTold'))}
				onChange={(text) => onChange({ loved: step(text) })}
			/>
			<SelectField
				label={say('fields.warmth')}
				value={garment.warmth?.toString() ?? ''}
				options={steps('warmth', say('fields.asKind'))}
				onChange={(text) => onChange({ warmth: step(text) })}
			/>
			<SelectField
				label={say('fields.pattern')}
				value={garment.patternByUser ?? ''}
				options={[
					{ value: '' as const, label: say('fields.asRead', { pattern: say(`patterns.${garment.pattern.type}`) }) },
					...PATTERN_TYPES.map((pattern) => ({ value: pattern, label: say(`patterns.${pattern}`) })),
				]}
				onChange={(pattern) => onChange({ patternByUser: pattern === '' ? null : pattern })}
			/>
		</>
	);
}

/** The occasions written with commas between them. */
const occasionsIn = (text: string): string[] =>
	text
		.split(',')
		.flatMap((one) => (one.trim() ? [one.trim()] : []))
		.slice(0, MOST_OCCASIONS);

/** What it is for, and, where it is leaving, how it goes. */
function UseFields({ garment, onChange }: PartProps) {
	return (
		<>
			<TextField
				label={say('fields.occasions')}
				value={(garment.occasions ?? []).join(', ')}
				hint={say('fields.occasionsHint')}
				onCommit={(text) => onChange({ occasions: occasionsIn(text) })}
			/>
			{garment.place === 'leaving' ? (
				<SelectField
					label={say('fields.wayOut')}
					value={garment.wayOut ?? ''}
					options={[
						{ value: '' as const, label: say('fields.notDecided') },
						...WAYS_OUT.map((way) => ({ value: way, label: say(`waysOut.${way}`) })),
					]}
					onChange={(way) => onChange({ wayOut: way === '' ? null : way })}
				/>
			) : null}
		</>
	);
}

/** All that the user can tell of a garment; each field is kept as soon as it is left. */
export function GarmentFields({ garment }: { garment: Garment }) {
	const change = useChange((changes: Partial<GarmentDetails>) =>
		changeThing('changeGarment', garment.id, garment, changes),
	);
	const set = change.run;
	return (
		<div className="stack">
			<div className="fields">
				<MainFields garment={garment} onChange={set} />
				<StateFields garment={garment} onChange={set} />
				<UseFields garment={garment} onChange={set} />
			</div>
			<fieldset>
				<legend>{say('fields.serves')}</legend>
				<span className="row">
					<YearPartChecks chosen={garment.yearParts} onChange={(yearParts) => set({ yearParts })} />
					<Check label={say('fields.basic')} checked={garment.basic} onChange={(basic) => set({ basic })} />
				</span>
			</fieldset>
			<TextArea label={say('fields.notes')} value={garment.notes} onCommit={(notes) => set({ notes })} />
			<TextArea label={say('fields.care')} value={garment.care} onCommit={(care) => set({ care })} />
			<Problem of={change.problem} />
		</div>
	);
}
